import { fieldBook } from '@/components/draft/build-field-book';
import { measureView } from '@/components/measure/build-measure-view';
import { pairViews } from '@/components/measure/build-pair-view';
import { t, tCode } from '@/components/words/words';
import type { Appraisal } from '@/lib/appraise/appraisal';
import { explainInputs } from '@/lib/diagnostics/explain/explain-inputs';
import { lossParts } from '@/lib/diagnostics/explain/explain-loss';
import type {
  DerivedInput,
  DerivedValue,
  Flag,
  Loss,
  LossRoute,
  RunFindings,
  Target,
} from '@/lib/diagnostics/findings';
import { plainReading } from '@/lib/diagnostics/plain-readings';
import type { ComparedChoice } from '@/lib/finance/comparison';
import { namesOf } from '@/lib/sheet/composing';
import { isDanger } from '@/lib/sheet/finding-section';
import { moneyRangeWords } from '@/lib/sheet/money-words';
import { listWords, wordsOf } from '@/lib/sheet/phrase';
import { quantityName, quantityRangeWords, quantityWords } from '@/lib/sheet/reading-words';
import type { Sheet } from '@/lib/sheet/sheet';
import { stageWords } from '@/lib/sheet/stage-words';
import { resolveAssumption } from '@/lib/visit/assumption';
import { assumptionKeys } from '@/lib/visit/assumption-keys';
import { fieldAt, unitsInText } from '@/lib/visit/field-at';
import type { Saying } from '@/lib/visit/wording';
import { causesView, shareWords, sourceWords } from './causes-view';
import { balanceChart, costChart } from './chart-view';
import { compareTable } from './compare-view';
import { driversView, flipMapView, investigateView, laterView, repairsView } from './decide-view';
import { doubtWords, percentRangeWords, rangeOfLog } from './doubt-words';
import { energyInputsView } from './energy-inputs-view';
import { triedRates } from './tried-rates';
import type {
  AnswerView,
  DerivedView,
  FlagView,
  InputView,
  LossView,
  RouteView,
  RunView,
  TargetView,
} from './view';
import { waysView } from './ways-view';
import { yearView } from './year-view';

const words = wordsOf('en');

/** The appraisal in the words of the screens; every number is written by the sheet's own rules. */
export function answerView(appraisal: Appraisal, sheet: Sheet): AnswerView {
  const { findings, energy, comparison } = appraisal;
  const names = namesOf(words, comparison);
  const told = (saying: Saying) => stageWords(words, saying, names);
  const losses = [findings.loss.heating, findings.loss.cooling].filter((loss) => loss !== undefined);
  const causes = causesView(appraisal, told);
  const balance = balanceChart(energy, comparison);
  return {
    flags: findings.flags.map((flag) => flagView(flag, told)),
    ...(causes === undefined ? {} : { causes }),
    runs: findings.runs.map((run, i) => runView(run, i, told)),
    measures: Object.fromEntries(
      findings.runs.flatMap((found) => {
        const run = appraisal.visit.runs.find(({ id }) => id === found.runId);
        return run === undefined ? [] : [[found.runId, measureView(run, found, told)]];
      }),
    ),
    pairs: pairViews(appraisal.visit, findings),
    losses: losses.map((loss) => lossView(loss, told)),
    wouldNarrow: findings.wouldNarrow.map(told),
    sheet,
    table: compareTable(sheet, comparison),
    cost: costChart(comparison),
    ...optional('drivers', driversView(comparison, told)),
    ...optional('later', laterView(comparison)),
    repairs: repairsView(comparison, told),
    ...optional(
      'investigate',
      investigateView(comparison, told, (cause) => tCode(`option.cause.${cause}`)),
    ),
    ...optional('flipMap', flipMapView(comparison)),
    ways: waysView(comparison, told),
    triedRates: triedRates(appraisal.visit),
    ...(balance === undefined ? {} : { balance }),
    energyInputs: energyInputsView(appraisal, told),
    year: yearView(energy, comparison),
    headline: headlineOf(appraisal),
  };
}

function optional<K extends string, T>(key: K, value: T | undefined): { readonly [key in K]?: T } {
  return value === undefined ? {} : ({ [key]: value } as { [key in K]: T });
}

/** The result in one line: the advice, else what costs about the same, else what leaving it costs. */
export function headlineOf(appraisal: Appraisal): string {
  const unsafe = appraisal.findings.flags.some((flag) => isDanger(appraisal, flag));
  const rest = moneyHeadline(appraisal, unsafe);
  return unsafe ? t('headline.unsafe', { rest }) : rest;
}

/** While something is unsafe, leaving it is not named as an equal. */
function moneyHeadline({ comparison }: Appraisal, unsafe: boolean): string {
  const { choices, recommendation, aboutTheSameIds, lowestTotalId, stayYears: stay } = comparison;
  const choiceOf = (id: string | undefined) => choices.find((choice) => choice.id === id);
  const totalOf = (id: string | undefined) => {
    const choice = choiceOf(id);
    return choice === undefined ? '' : moneyRangeWords(words, choice.totalTodayUsd).full;
  };
  if (choices.length < 2) return t('headline.leaveOnly', { total: totalOf(choices[0]?.id), stay });
  const picked = choiceOf(recommendation.choiceId);
  if (picked !== undefined)
    return t('headline.picked', { name: picked.name, total: totalOf(picked.id), stay });
  const alike = choices.filter(({ id }) => aboutTheSameIds.includes(id) || id === lowestTotalId);
  if (alike.length < 2) {
    const name = choiceOf(lowestTotalId)?.name ?? '';
    return t('headline.open', { name, total: totalOf(lowestTotalId), stay });
  }
  const same = unsafe ? alike.filter(({ kind }) => kind !== 'leave') : alike;
  const names = listWords(
    words,
    same.map((choice) => choice.name),
  );
  return t(same.length < 2 ? 'headline.sameAsLeaving' : 'headline.same', {
    names,
    total: totalOf(lowestOf(same)?.id),
    stay,
  });
}

function lowestOf(choices: readonly ComparedChoice[]): ComparedChoice | undefined {
  return [...choices].sort((a, b) => a.totalTodayUsd.likely - b.totalTodayUsd.likely)[0];
}

type Told = (saying: Saying) => string;

function flagView(flag: Flag, told: Told): FlagView {
  const code = flag.code.startsWith('flag.') ? flag.code : `flag.${flag.code}`;
  return {
    severity: flag.severity,
    words: told({ ...flag, code }),
    ...(flag.runId === undefined ? {} : { runId: flag.runId }),
    readings: flag.readings,
  };
}

function runView(run: RunFindings, at: number, told: Told): RunView {
  const targets = new Map(run.targets.map((target) => [target.id, targetView(target, told)]));
  const whyNot = new Map((run.noTargets ?? []).map(({ id, note }) => [id, told(note)]));
  const derived = run.derived.map((value) => derivedView(value, targets.get(value.id), whyNot.get(value.id)));
  const taken = new Set(run.derived.map((value) => value.id));
  return {
    id: run.runId,
    name: run.label.trim() === '' ? t('run.name', { n: at + 1 }) : run.label,
    mode: tCode(`option.mode.${run.mode}`),
    derived: offFirst(derived, (value) => value.target),
    targets: offFirst(
      [...targets.values()].filter((target) => !taken.has(target.id)),
      (target) => target,
    ),
    noTargets: [...whyNot].filter(([id]) => !taken.has(id)).map(([id, why]) => ({ name: nameOf(id), why })),
  };
}

/** What is off target first, each group in its own order. */
function offFirst<T>(list: readonly T[], targetOf: (item: T) => TargetView | undefined): T[] {
  const isOff = (item: T) => ['above', 'below'].includes(targetOf(item)?.verdict ?? 'none');
  return [...list.filter(isOff), ...list.filter((item) => !isOff(item))];
}

/** Plain name of an input: a derived value, a reading, an assumption, else a field of the unit or the house. */
function nameOf(id: string): string {
  const told = quantityName(words, id);
  if (told !== undefined) return told;
  const key = assumptionKeys.find((k) => k === id);
  if (key !== undefined) return resolveAssumption([], key).label;
  const book = fieldBook();
  return (book[`unit.${id}`] ?? book[`site.${id}`])?.label ?? fieldAt(['unit', id]).label;
}

/** The inputs in words, each once, gauge readings with the barometric pressure they rest on. */
function inputViews(inputs: readonly DerivedInput[]): InputView[] {
  return explainInputs(inputs).map((input) => ({
    name: nameOf(input.name),
    value: typeof input.value === 'number' ? quantityWords(words, input.value, input.unit) : input.value,
    basis: tCode(input.name === 'barometricPsia' ? `barometric.${input.basis}` : `basis.${input.basis}`),
    ...(input.source === undefined ? {} : { source: unitsInText(input.source) }),
  }));
}

function derivedView(
  value: DerivedValue,
  target: TargetView | undefined,
  noTarget: string | undefined,
): DerivedView {
  return {
    id: value.id,
    name: nameOf(value.id),
    value: quantityWords(words, value.value, value.unit),
    doubt: doubtWords(words, value.sd, value.unit),
    basis: tCode(`basis.${value.basis}`),
    formula: unitsInText(value.formula),
    source: unitsInText(value.source),
    inputs: inputViews(value.inputs),
    ...(target === undefined ? {} : { target }),
    ...(noTarget === undefined ? {} : { noTarget }),
  };
}

function targetView(target: Target, told: Told): TargetView {
  const verdict = target.verdict ?? 'none';
  const plain = plainReading(target);
  return {
    id: target.id,
    name: nameOf(target.id),
    ...(target.reading === undefined ? {} : { reading: quantityWords(words, target.reading, target.unit) }),
    range: quantityRangeWords(words, target.low, target.high, target.unit),
    verdict,
    verdictWords: t(`verdict.${verdict}`),
    source: sourceWords(target.source, target.status),
    ...(target.note === undefined ? {} : { note: told(target.note) }),
    ...(target.formula === undefined ? {} : { formula: unitsInText(target.formula) }),
    conditions: inputViews(target.conditions ?? []),
    ...(plain === undefined ? {} : { plain: told(plain) }),
  };
}

function lossView(loss: Loss, told: Told): LossView {
  return {
    mode: loss.mode,
    title: tCode(`loss.${loss.mode}`),
    capacity: percentRangeWords(loss.capacityRatioToHealthy),
    power: percentRangeWords(loss.powerRatioToHealthy),
    basis: tCode(`basis.${loss.basis}`),
    routes: loss.routes.map((route) => routeView(route, told, loss.routes.length === 1)),
    notes: loss.notes.map(told),
    parts: lossParts(loss).map(({ cause, shareFrac }) => ({
      name: cause === 'unexplained' ? t('loss.unexplained') : tCode(`option.cause.${cause}`),
      share: shareWords(shareFrac),
    })),
  };
}

/** Beside measurements age is an opinion so weak that its range would only puzzle. */
function routeView(route: LossRoute, told: Told, isAlone: boolean): RouteView {
  const notes = [...(route.note === undefined ? [] : [route.note]), ...(route.notes ?? [])].map(told);
  const name = tCode(`route.${route.id}`);
  if (route.id === 'agePrior' && !isAlone) return { name, notes: [...notes, t('loss.ageWeak')] };
  return {
    name,
    ...(route.lnCapacity === undefined ? {} : { capacity: percentRangeWords(rangeOfLog(route.lnCapacity)) }),
    ...(route.lnPower === undefined ? {} : { power: percentRangeWords(rangeOfLog(route.lnPower)) }),
    notes,
  };
}
