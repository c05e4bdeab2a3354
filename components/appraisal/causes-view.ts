import { t, tCode } from '@/components/words/words';
import type { Appraisal } from '@/lib/appraise/appraisal';
import {
  type CauseExplained,
  type EvidenceExplained,
  type EvidenceReading,
  explainCauses,
  type NextExplained,
} from '@/lib/diagnostics/explain/explain-causes';
import type { CausesFound } from '@/lib/diagnostics/findings';
import { chanceWords } from '@/lib/sheet/chance-words';
import { lowerFirst, wordsOf } from '@/lib/sheet/phrase';
import { quantityName, quantityNumber, quantityRangeWords, quantityWords } from '@/lib/sheet/reading-words';
import type { CauseId } from '@/lib/visit/cause';
import { unitsInText } from '@/lib/visit/field-at';
import type { Saying } from '@/lib/visit/wording';
import type { CausesView, CauseView, EvidenceView, NextView } from './view';

const words = wordsOf('en');

type Told = (saying: Saying) => string;

/** What the readings say about the cause, in the words of the screens; undefined when causes were not weighed. */
export function causesView(appraisal: Appraisal, told: Told): CausesView | undefined {
  const { findings, visit } = appraisal;
  const { causes } = findings;
  if (causes === undefined) return undefined;
  const { causes: explained, next } = explainCauses(visit, findings);
  const nameOfRun = (runId: string) => {
    const at = findings.runs.findIndex((run) => run.runId === runId);
    const label = findings.runs[at]?.label.trim() ?? '';
    return label === '' ? t('run.name', { n: at + 1 }) : label;
  };
  const counted = new Set(
    explained.flatMap(({ finding }) => finding.speaksFor.flatMap(({ runId }) => runId ?? [])),
  );
  const runName = counted.size > 1 ? nameOfRun : undefined;
  const views = explained.map((cause) => ({ rank: cause.rank, view: causeView(cause, told, runName) }));
  const ofRank = (rank: CauseExplained['rank']) =>
    views.filter((view) => view.rank === rank).map(({ view }) => view);
  const most = causes.explainsMost;
  const useful = next.filter(({ movesFinding }) => movesFinding);
  const idle = next.filter(({ movesFinding }) => !movesFinding);
  return {
    verdict: causes.verdict,
    verdictWords: verdictWords(causes, told),
    notes: [
      ...(most === undefined
        ? []
        : [
            t('causes.explainsMost', {
              cause: lowerFirst(causeName(most.cause)),
              share: shareWords(most.shareFrac),
            }),
          ]),
      ...causes.notes.filter(({ code }) => code !== 'tooFewReadings').map(told),
    ],
    main: ofRank('main'),
    mainIsGone: causes.resolved.some(({ cause }) => cause === causes.causes[0]?.cause),
    besides: ofRank('besides'),
    slight: ofRank('slight'),
    resolved: causes.resolved.map(({ cause, fromRunId, toRunId }) =>
      t('causes.resolved', {
        cause: causeName(cause),
        from: nameOfRun(fromRunId),
        to: nameOfRun(toRunId),
      }),
    ),
    next: useful.map((one) => nextView(one, told)),
    nothingNext: t(most === undefined ? 'causes.nothingNext' : 'causes.nothingNextOpen'),
    idle: idle.map((one) => idleWords(one, told)),
  };
}

function verdictWords(causes: CausesFound, told: Told): string {
  const off = causes.isOffTarget === true ? 'OffTarget' : '';
  const said = told({ code: `verdict.${causes.verdict}${off}` });
  if (causes.verdict !== 'noFaultFound') return said;
  return t('causes.verdictChance', { said, chance: chance(causes.noFaultProbability) });
}

/** "about 7 in 10", "more than 9 in 10". */
function chance(probability: number): string {
  const said = chanceWords(words, Math.min(1, probability));
  return /^\d/.test(said) ? t('causes.about', { chance: said }) : said;
}

function causeName(cause: CauseId): string {
  return tCode(`option.cause.${cause}`);
}

function causeView(cause: CauseExplained, told: Told, runName: RunName): CauseView {
  const { finding } = cause;
  return {
    id: finding.cause,
    name: causeName(finding.cause),
    chance: t('causes.chance', {
      standing: told({ code: `standing.${finding.standing}` }),
      chance: chance(finding.probability),
    }),
    ...(cause.rank === 'slight' ? {} : { severity: tCode(`severity.${finding.severity.word}`) }),
    severityMeaning: severityMeaning(cause, told),
    ...(cause.rank === 'main' ? { plain: told({ code: `causePlain.${finding.cause}` }) } : {}),
    speaksFor: cause.speaksFor.map((evidence) => evidenceView(evidence, 'for', runName)),
    speaksAgainst: cause.speaksAgainst.map((evidence) => evidenceView(evidence, 'against', runName)),
    confusedWith: finding.confusedWith.map(({ cause: other, separate }) => ({
      name: causeName(other),
      separate: told({ ...separate, code: `separate.${separate.code}` }),
    })),
    hints: finding.hints.map((hint) => told({ ...hint, code: `hint.${hint.code}` })),
    prior: t('causes.prior', { chance: chance(cause.priorFrac) }),
    priorSource: sourceWords(cause.priorSource, cause.priorStatus),
    patterns: cause.patterns.map((pattern) => ({
      mode: tCode(`option.mode.${pattern.mode}`),
      source: sourceWords(pattern.source, pattern.status),
      ...(pattern.note === undefined ? {} : { note: unitsInText(pattern.note) }),
    })),
    loss: lossWords(cause),
  };
}

/** Told once where both modes say the same. */
function lossWords({ lossShares }: CauseExplained): string[] {
  const told = lossShares.map(({ mode, shareFrac }) => ({ mode, share: shareWords(shareFrac) }));
  const [first] = told;
  if (first === undefined) return [];
  if (told.every(({ share }) => share === first.share))
    return [t('causes.lossShare', { share: first.share })];
  return told.map(({ mode, share }) =>
    t('causes.lossShareOf', { mode: tCode(`option.mode.${mode}`), share }),
  );
}

function severityMeaning(cause: CauseExplained, told: Told): string {
  const { level, word } = cause.finding.severity;
  return t('causes.severityMeaning', {
    word: tCode(`severity.${word}`),
    level: shareWords(level),
    meaning: told(cause.severityMeaning),
  });
}

/** A share told in steps of five percent. */
export function shareWords(frac: number): string {
  return quantityWords(words, Math.max(0.05, Math.round(frac * 20) / 20), 'frac');
}

/** A source with how it is known, said once. */
export function sourceWords(text: string, status: string): string {
  const source = unitsInText(text);
  const said = { assumption: /judgement/i, memory: /\bmemory\b|no source/i }[status];
  if (said?.test(source) === true || source.includes(status)) return source;
  return t('causes.source', { source, status: tCode(`status.${status}`) });
}

type RunName = ((runId: string) => string) | undefined;

function evidenceView(evidence: EvidenceExplained, side: 'for' | 'against', runName: RunName): EvidenceView {
  const { kind, id, runId, reading } = evidence;
  const seen = kind === 'observation';
  const name = seen ? tCode(`option.observation.${id}`) : (quantityName(words, id) ?? id);
  return {
    key: `${id} ${runId ?? ''}`,
    name: seen ? t('evidence.seen', { what: lowerFirst(name) }) : name,
    ...(reading === undefined
      ? {}
      : { value: quantityWords(words, reading.value, reading.unit), detail: detailWords(id, reading) }),
    strength: tCode(`evidence.${side}.${evidence.strength}`),
    ...(runName === undefined || runId === undefined ? {} : { run: runName(runId) }),
  };
}

/** "24 °F above the 10 °F of a healthy unit (8 to 12 °F)". */
function detailWords(id: string, reading: EvidenceReading): string {
  const { unit, expected, low, high, side } = reading;
  const off = offWords(reading);
  const healthy = quantityWords(words, expected, unit);
  if (id === 'refrigerantCapacityBtuh') return t(`evidence.airSide.${side}`, { off, expected: healthy });
  const said = t(`evidence.${side}`, { off, expected: healthy });
  return low === undefined || high === undefined
    ? t('evidence.noRule', { said })
    : t('evidence.range', { said, range: quantityRangeWords(words, low, high, unit) });
}

function offWords({ off, offIsShare, unit }: EvidenceReading): string {
  if (unit === 'frac') return t('evidence.points', { n: quantityNumber(words, off, 'frac') });
  return quantityWords(words, off, offIsShare ? 'frac' : unit);
}

function nextView({ next, leavesOpen }: NextExplained, told: Told): NextView {
  const code = next.saying.code;
  return {
    title: told(next.saying),
    outcomes: next.outcomes.map(({ outcome, chance: likely, cause, probability, moved }, i) => ({
      outcome: told({ code: `outcome.${code.replace(/^next\./, '')}.${outcome}` }),
      chance: chance(likely),
      meaning: [
        t(leavesOpen[i] === true ? 'causes.thenOpen' : 'causes.then', {
          cause: lowerFirst(causeName(cause)),
          chance: chance(probability),
        }),
        ...(moved === undefined ? [] : [movedWords(moved)]),
      ].join('; '),
    })),
  };
}

type Moved = NonNullable<NextExplained['next']['outcomes'][number]['moved']>;

function movedWords({ cause, from, to }: Moved): string {
  return t(to > from ? 'causes.movedUp' : 'causes.movedDown', {
    cause: lowerFirst(causeName(cause)),
    chance: chance(to),
  });
}

/** A reading that leaves the leading cause alone, with the other cause it would raise most, if any. */
function idleWords({ next }: NextExplained, told: Told): string {
  const raised = next.outcomes
    .flatMap(({ outcome, moved }) =>
      moved === undefined || moved.to <= moved.from ? [] : [{ outcome, moved }],
    )
    .sort((a, b) => b.moved.to - b.moved.from - (a.moved.to - a.moved.from))[0];
  const title = told(next.saying);
  if (raised === undefined) return title;
  const code = `outcome.${next.saying.code.replace(/^next\./, '')}.${raised.outcome}`;
  return t('causes.idleMoves', {
    title,
    outcome: told({ code }),
    moved: movedWords(raised.moved),
  });
}
