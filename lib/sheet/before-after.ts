import type { Findings, Flag, Loss, RunComparison, RunFindings, Target } from '../diagnostics/findings';
import type { EnergyResult } from '../energy/energy-result';
import type { Estimate } from '../math/estimate';
import { fieldAt } from '../visit/field-at';
import type { Run } from '../visit/run';
import type { Visit } from '../visit/visit';
import { cautionsSection } from './cautions-section';
import { climateWords } from './climate-words';
import { namesOf, told } from './composing';
import rules from './data/rounding.json';
import { documentFacts, type Trace, visitFacts } from './document-facts';
import { flagWords, isDanger } from './finding-section';
import { withLeaveName } from './leave-name';
import { moneyRangeWords, savingWords } from './money-words';
import {
  counted,
  type Locale,
  listWords,
  lowerFirst,
  type PhraseCode,
  phrase,
  plainNumber,
  type Words,
  wordsOf,
} from './phrase';
import type { PlainDocument, PlainSection, PlainTable } from './plain-document';
import { quantityName, quantityNumber, quantityWords, readingName } from './reading-words';
import { rawReadings } from './readings-section';
import { roundToRange } from './round-to-range';
import type { Names } from './stage-words';

/** What a repair did, by the readings before and after it; made by lib/appraise. */
export type RepairRead = {
  readonly modelVersion: string;
  /** The visit with just the two runs of the mode. */
  readonly visit: Visit;
  readonly findings: Findings;
  readonly energy: EnergyResult;
  readonly beforeRunId: string;
  readonly afterRunId: string;
  /** Name of the repair as entered; left out when none names the run after it. */
  readonly repairName?: string;
  readonly lossBefore: Loss;
  readonly lossAfter: Loss;
  /** Of a year in this house [USD]. */
  readonly costBeforeUsd: Estimate;
  readonly costAfterUsd: Estimate;
  /** What the readings after it show that it saves a year [USD], positive = costs less. */
  readonly measuredSavingUsd: Estimate;
  /** What was expected from the readings before it alone [USD a year]; left out when no repair was entered. */
  readonly predictedSavingUsd?: Estimate;
};

export type BeforeAfterInput = RepairRead & { readonly locale: Locale; readonly trace?: Trace | undefined };

type Pair = BeforeAfterInput & {
  readonly words: Words;
  readonly names: Names;
  readonly before: Run;
  readonly after: Run;
};

/**
 * The sheet after a repair, as data: what improved, the saving that the readings show beside the one that was
 * predicted, all readings before and after, and what was not verified.
 *
 * @param input  from `appraiseRepair`
 * @throws invariant if a sentence lacks a value (a bug, never bad input)
 * Check: tests/sheet/before-after.test.ts
 */
export function composeBeforeAfter(input: BeforeAfterInput): PlainDocument {
  const words = wordsOf(input.locale);
  const { visit, findings } = input;
  const [before, after] = [runOf(visit, input.beforeRunId), runOf(visit, input.afterRunId)];
  const p: Pair = { ...input, words, names: namesOf(words, withLeaveName(words, visit)), before, after };
  const heading = phrase(words, 'after.heading', { unit: phrase(words, `unit.${visit.unit.kind}`) });
  const dangers = findings.flags.filter((flag) => isDanger(p, flag));
  return {
    ...documentFacts(p, heading),
    subject: phrase(words, 'after.subject'),
    heading,
    facts: [
      ...visitFacts(p),
      { label: phrase(words, 'after.done'), text: input.repairName ?? phrase(words, 'after.doneUnnamed') },
      {
        label: phrase(words, 'after.runs'),
        text: phrase(words, 'after.runsText', {
          before: labelOf(p, before),
          after: labelOf(p, after),
          mode: phrase(words, after.mode === 'heating' ? 'readings.modeHeating' : 'readings.modeCooling'),
        }),
      },
    ],
    sections: [
      improvedSection(p, dangers),
      savingSection(p),
      notVerifiedSection(p),
      {
        id: 'cautions',
        weight: 'decides',
        ...cautionsSection(p, false),
      },
      readingsSection(p),
    ],
  };
}

function runOf(visit: Visit, id: string): Run {
  const run = visit.runs.find((r) => r.id === id);
  if (run === undefined) throw new Error(`the visit has no run ${id}`);
  return run;
}

function labelOf({ words }: Pair, run: Run): string {
  return run.label === undefined || run.label.trim() === '' ? phrase(words, 'after.runUnnamed') : run.label;
}

function foundIn(p: Pair, run: Run): RunFindings | undefined {
  return p.findings.runs.find((found) => found.runId === run.id);
}

function improvedSection(p: Pair, dangers: readonly Flag[]): PlainSection {
  const { words } = p;
  const resolved = p.findings.causes?.resolved.filter((cause) => cause.toRunId === p.after.id) ?? [];
  return {
    id: 'improved',
    title: phrase(words, 'after.improvedTitle'),
    weight: 'decides',
    warnings: dangers.map((flag) => flagWords(p, flag)),
    sentences: [
      phrase(words, 'after.output', {
        what: phrase(words, `mode.${p.after.mode}`),
        ...ends('before', p.lossBefore.capacityRatioToHealthy),
        ...ends('after', p.lossAfter.capacityRatioToHealthy),
      }),
      phrase(words, 'after.power', {
        ...ends('before', p.lossBefore.powerRatioToHealthy),
        ...ends('after', p.lossAfter.powerRatioToHealthy),
      }),
      ...resolved.map(({ cause }) =>
        phrase(words, 'after.resolved', { cause: phrase(words, `cause.${cause}`) }),
      ),
      ...countedChanges(p, 'after.better', true),
      ...countedChanges(p, 'after.worse', false),
      ...stillOff(p),
    ],
  };
}

/** Likely and range of a share in percent, under names that begin so. */
function ends(name: 'before' | 'after', share: Estimate): Record<string, string> {
  const percent = { low: share.low * 100, likely: share.likely * 100, high: share.high * 100 };
  const r = roundToRange(percent, rules.percentStep.value);
  return { [name]: String(r.likely), [`${name}Low`]: String(r.low), [`${name}High`]: String(r.high) };
}

type Change = RunComparison['changes'][number];

function comparisonOf(p: Pair): RunComparison | undefined {
  return p.findings.causes?.comparisons.find((c) => c.fromRunId === p.before.id && c.toRunId === p.after.id);
}

/** How many readings clearly moved, towards or away from a healthy unit's; which they are, the table tells. */
function countedChanges(p: Pair, stem: 'after.better' | 'after.worse', towardsTarget: boolean): string[] {
  const changes = comparisonOf(p)?.changes ?? [];
  const count = changes.filter((change) => change.real && change.towardsTarget === towardsTarget).length;
  return count === 0 ? [] : [counted(p.words, stem, count)];
}

/** What is off after the repair, in the diagnosis' words for the house's owner. */
function stillOff(p: Pair): string[] {
  const off = (foundIn(p, p.after)?.targets ?? []).filter(
    ({ verdict }) => verdict === 'above' || verdict === 'below',
  );
  const plain = off
    .map(({ id, verdict }) => `homeowner.${id}.${verdict}`)
    .filter((code) => p.words.stages[code] !== undefined)
    .map((code) => told(p, { code }));
  const sentences = [...new Set(plain)];
  return sentences.length === 0 ? [] : [phrase(p.words, 'after.stillOff'), ...sentences];
}

function savingSection(p: Pair): PlainSection {
  const { words } = p;
  const year = (code: PhraseCode, value: Estimate) => ({
    label: phrase(words, code),
    text: moneyRangeWords(words, value).full,
  });
  const saved = (code: PhraseCode, value: Estimate) => ({
    label: phrase(words, code),
    text: savingWords(words, value),
  });
  return {
    id: 'saving',
    title: phrase(words, 'after.savingTitle'),
    weight: 'decides',
    facts: [
      year('after.costBefore', p.costBeforeUsd),
      year('after.costAfter', p.costAfterUsd),
      saved('after.measured', p.measuredSavingUsd),
      ...(p.predictedSavingUsd === undefined ? [] : [saved('after.predicted', p.predictedSavingUsd)]),
    ],
    sentences: [
      phrase(words, predictionVerdict(p)),
      phrase(words, 'after.savingBasis', { climate: climateWords(words, p.energy.climateName) }),
    ],
  };
}

/** How the saving that was read stands to the one that was predicted; ranges that meet are no contradiction. */
function predictionVerdict({ measuredSavingUsd: is, predictedSavingUsd: was }: Pair): PhraseCode {
  if (was === undefined) return 'after.noPrediction';
  if (is.high < was.low) return 'after.lessThanPredicted';
  if (is.low > was.high) return 'after.moreThanPredicted';
  return 'after.asPredicted';
}

/** Everything read in either run, and what follows from it. */
function readingsSection(p: Pair): PlainSection {
  const { words } = p;
  const ids = [...new Set([...derivedIds(p), ...rawIds(p)])];
  const table: PlainTable = {
    caption: phrase(words, 'after.tableTitle'),
    columns: [
      { label: phrase(words, 'readings.columnName'), align: 'left', share: 0.32 },
      { label: phrase(words, 'after.columnBefore'), align: 'right', share: 0.14 },
      { label: phrase(words, 'after.columnAfter'), align: 'right', share: 0.14 },
      { label: phrase(words, 'after.columnChange'), align: 'right', share: 0.13 },
      { label: phrase(words, 'readings.columnTarget'), align: 'right', share: 0.13 },
      { label: phrase(words, 'readings.columnVerdict'), align: 'left', share: 0.14 },
    ],
    rows: ids.map((id) => readingRow(p, id)),
  };
  return { id: 'readings', title: phrase(words, 'readings.title'), weight: 'evidence', tables: [table] };
}

function derivedIds(p: Pair): string[] {
  return (comparisonOf(p)?.changes ?? []).map((change) => change.id);
}

function rawIds(p: Pair): string[] {
  return [...rawReadings(p.words, p.before), ...rawReadings(p.words, p.after)].map((reading) => reading.id);
}

function readingRow(p: Pair, id: string): PlainTable['rows'][number] {
  const { words } = p;
  const change = comparisonOf(p)?.changes.find((c) => c.id === id);
  const unit = change?.unit ?? fieldAt(['runs', '0', id]).unit ?? '';
  const [before, after] =
    change === undefined
      ? [rawOf(words, p.before, id), rawOf(words, p.after, id)]
      : [change.before, change.after];
  const target = foundIn(p, p.after)?.targets.find((t) => t.id === id);
  const shown = (value: number | undefined) =>
    value === undefined ? phrase(words, 'after.notRead') : quantityWords(words, value, unit);
  return {
    strong: change?.real === true,
    cells: [
      (change === undefined ? readingName(words, id) : quantityName(words, id)) ?? id,
      shown(before),
      shown(after),
      before === undefined || after === undefined ? '\u2013' : changeWords(words, after - before, unit),
      target === undefined ? '\u2013' : targetWords(words, target),
      phrase(words, changeVerdict(change, target)),
    ],
  };
}

function rawOf(words: Words, run: Run, id: string): number | undefined {
  return rawReadings(words, run).find((reading) => reading.id === id)?.value;
}

function changeWords(words: Words, change: number, unit: string): string {
  const number = quantityNumber(words, change, unit);
  return change > 0 && number !== '0' ? `+${number}` : number;
}

function targetWords(words: Words, target: Target): string {
  return phrase(words, 'assumptions.range', {
    low: quantityNumber(words, target.low, target.unit),
    high: quantityNumber(words, target.high, target.unit),
  });
}

function changeVerdict(change: Change | undefined, target: Target | undefined): PhraseCode {
  if (change === undefined)
    return target?.verdict === undefined ? 'after.reading' : `verdict.${target.verdict}`;
  if (!change.real) return 'after.noClearChange';
  if (change.towardsTarget === undefined) return 'after.changed';
  if (!change.towardsTarget) return 'after.farther';
  return target?.verdict === 'within' ? 'after.nowNormal' : 'after.nearer';
}

/** What nobody should take as proven. */
function notVerifiedSection(p: Pair): PlainSection {
  const { words } = p;
  const missing = [...new Set(rawIds(p))].filter(
    (id) => rawOf(words, p.before, id) !== undefined && rawOf(words, p.after, id) === undefined,
  );
  const otherMode = p.after.mode === 'heating' ? 'cooling' : 'heating';
  const hasOther = p.visit.unit.kind === 'heatPump' || otherMode === 'cooling';
  const doubts = p.findings.flags.filter(
    (flag) => flag.runId === p.after.id && (flag.severity === 'doubt' || flag.severity === 'conflict'),
  );
  const names = missing.map((id) => lowerFirst(readingName(words, id) ?? id));
  return {
    id: 'not-verified',
    title: phrase(words, 'after.notVerifiedTitle'),
    weight: 'decides',
    sentences: [
      phrase(words, 'after.notMetered'),
      ...(hasOther ? [phrase(words, 'after.otherMode', { what: phrase(words, `mode.${otherMode}`) })] : []),
      ...(names.length === 0 ? [] : [phrase(words, 'after.notReadAgain', { list: listWords(words, names) })]),
      ...(comparisonOf(p)?.notes ?? []).map((note) => told(p, note)),
      ...doubts.map((flag) => flagWords(p, flag)),
      phrase(words, 'after.notLasting'),
      ...(p.lossAfter.capacityRatioToHealthy.high < 1
        ? [
            phrase(words, 'after.stillLoss', {
              percent: plainNumber(words, 100 * (1 - p.lossAfter.capacityRatioToHealthy.likely), 0),
            }),
          ]
        : []),
    ],
  };
}
