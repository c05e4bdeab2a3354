import { t, tn } from '@/components/words/words';
import type { Findings, RunFindings } from '@/lib/diagnostics/findings';
import { comparePairs, type PairComparison } from '@/lib/diagnostics/measuring/compare-pair';
import { wordsOf } from '@/lib/sheet/phrase';
import { quantityName, quantityNumber } from '@/lib/sheet/reading-words';
import { fieldAt, unitWords } from '@/lib/visit/field-at';
import type { Visit } from '@/lib/visit/visit';
import type { PairRow, PairView } from './view';

const words = wordsOf('en');

type Change = PairComparison['changes'][number];
type Condition = PairComparison['conditions'][number];

/** Every two runs of one mode side by side, in words. */
export function pairViews(visit: Visit, findings: Findings): PairView[] {
  return comparePairs(visit, findings.runs).map((pair) => {
    const of = (id: string) => findings.runs.find((run) => run.runId === id);
    const [before, after] = [of(pair.fromRunId), of(pair.toRunId)];
    const real = pair.changes.filter((change) => change.real);
    return {
      fromId: pair.fromRunId,
      toId: pair.toRunId,
      summary: real.length === 0 ? t('measure.pair.none') : tn('measure.pair.real', real.length),
      warnings: [
        ...pair.conditions.filter(({ verdict }) => verdict !== 'same').map(conditionWarning),
        ...(pair.electricHeatDiffers ? [t('measure.pair.electricHeat')] : []),
      ],
      conditions: pair.conditions.map(conditionRow),
      rows: [...real, ...pair.changes.filter((change) => !change.real)].map((change) =>
        changeRow(change, before, after),
      ),
    };
  });
}

function conditionWarning(condition: Condition): string {
  const { label, unit } = fieldAt(['runs', '0', condition.id]);
  const { before, after } = condition;
  if (before === undefined || after === undefined) return t('measure.pair.unknown', { name: label });
  return t('measure.pair.changed', {
    name: label,
    before: quantityNumber(words, before, unit ?? ''),
    after: quantityNumber(words, after, unit ?? ''),
    unit: unitWords(unit ?? ''),
  });
}

function conditionRow({ id, before, after, verdict }: Condition): PairRow {
  const { label, unit = '' } = fieldAt(['runs', '0', id]);
  const number = (value: number | undefined) =>
    value === undefined ? t('derived.notRead') : quantityNumber(words, value, unit);
  return {
    id,
    name: named(label, unit),
    before: number(before),
    after: number(after),
    change: before === undefined || after === undefined ? '' : signed(before, after, unit),
    real: verdict === 'changed',
    says: t(`measure.pair.condition.${verdict}`),
  };
}

function changeRow(change: Change, before: RunFindings | undefined, after: RunFindings | undefined): PairRow {
  const { id, unit } = change;
  return {
    id,
    name: named(quantityName(words, id) ?? id, unit),
    before: quantityNumber(words, change.before, unit),
    after: quantityNumber(words, change.after, unit),
    change: signed(change.before, change.after, unit),
    real: change.real,
    says: saysOf(change, before, after),
  };
}

function saysOf(change: Change, before: RunFindings | undefined, after: RunFindings | undefined): string {
  if (change.real) return towards(change, before, after);
  return t(change.before === change.after ? 'measure.pair.same' : 'measure.pair.notReal');
}

/** Where a real change led: on target now, nearer to it, or away from it. */
function towards(
  { id, towardsTarget }: Change,
  before: RunFindings | undefined,
  after: RunFindings | undefined,
): string {
  const verdictIn = (run: RunFindings | undefined) =>
    run?.targets.find((target) => target.id === id)?.verdict;
  if (verdictIn(after) === 'within') {
    return t(verdictIn(before) === 'within' ? 'measure.pair.stillWithin' : 'measure.pair.nowWithin');
  }
  if (towardsTarget === undefined) return t('measure.pair.realNoTarget');
  return t(towardsTarget ? 'measure.pair.nearer' : 'measure.pair.away');
}

function named(name: string, unit: string): string {
  const shown = unit === 'frac' ? '%' : unitWords(unit);
  return shown === '' ? name : t('measure.pair.named', { name, unit: shown });
}

/** The difference of the two numbers as they are shown, so that the row adds up. */
function signed(before: number, after: number, unit: string): string {
  const difference = asShown(after, unit) - asShown(before, unit);
  const shown = quantityNumber(words, unit === 'frac' ? difference / 100 : difference, unit);
  return difference > 0 ? `+${shown}` : shown;
}

function asShown(value: number, unit: string): number {
  return Number(quantityNumber(words, value, unit).replaceAll(',', '').replace('\u2212', '-'));
}
