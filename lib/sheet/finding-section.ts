import { isClearLoss } from '../diagnostics/explain/explain-loss';
import type { Flag, Loss, RunFindings } from '../diagnostics/findings';
import type { Estimate } from '../math/estimate';
import type { CauseId } from '../visit/cause';
import type { Mode } from '../visit/run';
import { chanceWords } from './chance-words';
import { type Composing, scenario, told } from './composing';
import rules from './data/rounding.json';
import { counted, listWords, lowerFirst, type PhraseCode, phrase } from './phrase';
import { readingName } from './reading-words';
import { roundToRange } from './round-to-range';
import type { Sheet } from './sheet';

/** How many of the readings that are off are told in plain words on page one. */
const plainReadings = 2;

/** What was found, in everyday words, with how sure; and whose judgement the cause is. */
export function findingSection(c: Composing): Sheet['pageOne']['finding'] {
  return {
    title: phrase(c.words, 'finding.title'),
    sentences: [...lossSentences(c), ...readingSentences(c), ...causeSentences(c), ...unmetSentences(c)],
    dangers: [
      ...new Set(c.findings.flags.filter((flag) => isDanger(c, flag)).map((flag) => dangerWords(c, flag))),
    ],
    ...conflictPart(c),
  };
}

/** The readings that cannot all be true, by name, so that they are taken again. */
function conflictPart(c: Composing): { readonly conflict?: string } {
  const flags = c.findings.flags.filter((flag) => flag.severity === 'conflict');
  if (flags.length === 0) return {};
  const named = [...new Set(flags.flatMap((flag) => flag.readings))];
  const readings = named.map((id) => lowerFirst(readingName(c.words, id) ?? id));
  const code = readings.length === 2 ? 'finding.conflictTwo' : 'finding.conflictMany';
  return { conflict: phrase(c.words, code, { readings: listWords(c.words, [...new Set(readings)]) }) };
}

/** A danger that still stands: one of an earlier run of the same mode has been dealt with since. */
export function isDanger(c: Pick<Composing, 'findings'>, flag: Flag): boolean {
  if (flag.severity !== 'danger') return false;
  return flag.runId === undefined || lastRuns(c).some((run) => run.runId === flag.runId);
}

/** Words of a flag for the evidence page; they live under `flag.<code>` of the stage that raised it. */
export function flagWords(c: Pick<Composing, 'words' | 'names'>, flag: Flag): string {
  return told(c, { ...flag, code: flag.code.startsWith('flag.') ? flag.code : `flag.${flag.code}` });
}

/** Words of a danger for the house's owner; the stage's own words when there are none. */
function dangerWords(c: Composing, flag: Flag): string {
  const code = `danger.${flag.code}`;
  return code in c.words.phrases ? phrase(c.words, code as PhraseCode) : flagWords(c, flag);
}

/** The last run of each mode: how things stand now. */
function lastRuns(c: Pick<Composing, 'findings'>): RunFindings[] {
  const { runs } = c.findings;
  return runs.filter((run) => runs.findLast((other) => other.mode === run.mode) === run);
}

/** The first run of each mode: the unit as found. */
function foundRuns(c: Composing): RunFindings[] {
  const { runs } = c.findings;
  return runs.filter((run) => runs.find((other) => other.mode === run.mode) === run);
}

function lossSentences(c: Composing): string[] {
  const { heating, cooling } = c.findings.loss;
  const isHeatPump = c.visit.unit.kind === 'heatPump';
  const losses = [isHeatPump ? heating : undefined, cooling].filter((loss) => loss !== undefined);
  if (losses.length === 0) {
    return [phrase(c.words, 'finding.unknown', { what: modeName(c, isHeatPump ? 'heating' : 'cooling') })];
  }
  if (losses.every((loss) => loss.basis === 'assumed')) return assumedSentences(c, losses);
  const [first] = losses;
  const full = losses.filter(isFullButPower);
  const clear = losses.filter((loss) => isClearLoss(loss) && !isFullButPower(loss));
  const none = losses.filter((loss) => !isClearLoss(loss));
  const whole = none.filter(isLikelyFull);
  const doubtful = none.filter((loss) => !isLikelyFull(loss));
  const isOther = clear.length + full.length > 0;
  return [
    ...capacitySentences(c, clear, 'finding.loss'),
    ...(first !== undefined && clear.includes(first) ? powerSentence(c, first, 'finding.power') : []),
    ...full.map((loss) => fullButPowerSentence(c, loss)),
    ...capacitySentences(c, doubtful, isOther ? 'finding.second' : 'finding.maybeLoss'),
    ...capacitySentences(c, whole, isOther || doubtful.length > 0 ? 'finding.noLossToo' : 'finding.noLoss'),
  ];
}

/** What is assumed when no run could be used: nothing was found, so nothing may be said to have been found. */
function assumedSentences(c: Composing, losses: readonly Loss[]): string[] {
  const byCause = losses.some((loss) => loss.routes.some((route) => route.id === 'faultCorrelation'));
  return [
    ...capacitySentences(c, losses, byCause ? 'finding.assumedCause' : 'finding.assumed'),
    ...losses.slice(0, 1).flatMap((loss) => powerSentence(c, loss, 'finding.powerAssumed')),
  ];
}

/** Output whose range reaches a healthy unit's and whose likely value is next to it. */
function isLikelyFull(loss: Loss): boolean {
  const { likely, high } = loss.capacityRatioToHealthy;
  return high >= 1 && likely >= rules.fullOutputFrac.value;
}

/** Whole output for clearly more power. */
function isFullButPower(loss: Loss): boolean {
  return isLikelyFull(loss) && loss.powerRatioToHealthy.low > 1;
}

function fullButPowerSentence(c: Composing, loss: Loss): string {
  const more = percentEnds(above1(loss.powerRatioToHealthy));
  return phrase(c.words, 'finding.fullButPower', {
    what: modeName(c, loss.mode),
    ...percentEnds(loss.capacityRatioToHealthy),
    power: more.likely,
    powerLow: more.low,
    powerHigh: more.high,
  });
}

type CapacityCode =
  | 'finding.loss'
  | 'finding.noLoss'
  | 'finding.noLossToo'
  | 'finding.maybeLoss'
  | 'finding.second'
  | 'finding.assumed'
  | 'finding.assumedCause';

function capacitySentences(c: Composing, losses: readonly Loss[], code: CapacityCode): string[] {
  return losses.map((loss, i) =>
    phrase(c.words, i === 0 ? code : 'finding.second', {
      what: modeName(c, loss.mode),
      ...percentEnds(loss.capacityRatioToHealthy),
    }),
  );
}

function powerSentence(c: Composing, loss: Loss, code: 'finding.power' | 'finding.powerAssumed'): string[] {
  const power = loss.powerRatioToHealthy;
  return power.low <= 1 ? [] : [phrase(c.words, code, percentEnds(above1(power)))];
}

function above1({ low, likely, high }: Estimate): Estimate {
  return { low: low - 1, likely: likely - 1, high: high - 1 };
}

function modeName(c: Composing, mode: Mode): string {
  return phrase(c.words, `mode.${mode}`);
}

/** Ends of a share in percent, as printed. */
function percentEnds(share: Estimate): Record<'low' | 'likely' | 'high', string> {
  const r = roundToRange(
    { low: share.low * 100, likely: share.likely * 100, high: share.high * 100 },
    rules.percentStep.value,
  );
  return { low: String(r.low), likely: String(r.likely), high: String(r.high) };
}

/** What the readings that are off mean, in the diagnosis' words for the house's owner; capacity is told already. */
function readingSentences(c: Composing): string[] {
  const sentences = foundRuns(c)
    .flatMap((run) => run.plain ?? [])
    .filter(({ code }) => !TOLD_APART.test(code))
    .map((saying) => told(c, saying));
  return [...new Set(sentences)].slice(0, plainReadings);
}

/** Codes that say nothing new here: all is well, readings in conflict, capacity. */
const TOLD_APART = /^homeowner\.(allWithin|conflict|\w+CapacityBtuh\.\w+)$/;

/** Whose judgement the cause is, and what the readings say to it. */
function causeSentences(c: Composing): string[] {
  const suspected = c.findings.suspectedCause?.cause;
  const readings = readingsOnCause(c, suspected);
  if (suspected === undefined) return readings ?? [phrase(c.words, 'finding.causeNotNamed')];
  if (suspected === 'none') return [phrase(c.words, 'finding.causeNone'), ...(readings ?? [])];
  const cause = phrase(c.words, `cause.${suspected}`);
  return [
    phrase(c.words, 'finding.cause', { cause }),
    ...(readings ?? [phrase(c.words, 'finding.causeUnproven')]),
  ];
}

/** What the readings make of the cause, with how sure; undefined when the diagnosis did not weigh causes. */
function readingsOnCause(c: Composing, suspected: CauseId | undefined): string[] | undefined {
  const { causes } = c.findings;
  if (causes === undefined) return undefined;
  const [top] = causes.causes;
  if (causes.verdict === 'tooFewReadings') return [phrase(c.words, 'finding.readingsTooFew')];
  if (causes.verdict === 'noFaultFound') {
    return [
      phrase(
        c.words,
        causes.isOffTarget === true ? 'finding.readingsNoSingleFault' : 'finding.readingsNoFault',
        { chance: chanceWords(c.words, causes.noFaultProbability) },
      ),
    ];
  }
  if (causes.verdict === 'unclear' || top === undefined) return [phrase(c.words, 'finding.readingsUnclear')];
  const chance = chanceWords(c.words, Math.min(1, top.probability));
  const gone = causes.resolved.some((resolved) => resolved.cause === top.cause);
  const most = causes.explainsMost;
  const rest = [
    ...(most === undefined
      ? []
      : [phrase(c.words, 'finding.explainsMost', { cause: phrase(c.words, `cause.${most.cause}`) })]),
    ...(gone ? [phrase(c.words, 'finding.resolved')] : []),
  ];
  if (top.cause === suspected) return [phrase(c.words, 'finding.readingsAgree', { chance }), ...rest];
  const cause = phrase(c.words, `cause.${top.cause}`);
  const code =
    suspected === undefined || suspected === 'none' ? 'finding.readingsPoint' : 'finding.readingsOther';
  return [phrase(c.words, code, { cause, chance }), ...rest];
}

/** Hours in which a clear loss leaves the house short; without a clear loss the number means little. */
function unmetSentences(c: Composing): string[] {
  const { heating, cooling } = c.findings.loss;
  const isFound = (loss: Loss | undefined) =>
    loss !== undefined && loss.basis !== 'assumed' && isClearLoss(loss);
  if (![heating, cooling].some(isFound)) return [];
  const extra =
    (scenario(c, 'asFound')?.likely.unmetHours ?? 0) - (scenario(c, 'healthy')?.likely.unmetHours ?? 0);
  const step = rules.hourStep.value;
  const hours = Math.round(extra / step) * step;
  const stem = c.visit.unit.kind === 'heatPump' ? 'finding.unmet' : 'finding.unmetCool';
  return hours >= step ? [counted(c.words, stem, hours)] : [];
}
