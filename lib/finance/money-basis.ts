import type { Findings } from '../diagnostics/findings';
import type { EnergyResult } from '../energy/energy-result';
import { type CauseChances, causeChances } from '../energy/recovery';
import { type Estimate, exactEstimate } from '../math/estimate';
import type { Visit } from '../visit/visit';
import type { Saying } from '../visit/wording';
import { boundedAssumption, type FinanceKey, financeKeys } from './bounded-assumption';
import { yearOf } from './calendar';
import conventions from './data/conventions.json';
import { foundHazardRatio, hazardPower } from './hazard-ratio';
import { renewsCompressor } from './new-compressor';

/** Everything all choices share: dates, rates, life of units, and how the unit as found stands. */
export type MoneyBasis = {
  readonly baseDate: string;
  /** Whole years. */
  readonly stayYears: number;
  readonly timing: 'endOfYear' | 'midYear';
  readonly residual: 'linear' | 'none';
  readonly values: Readonly<Record<FinanceKey, Estimate>>;
  /** Age of the present unit; exact when its year of manufacture is known. */
  readonly ageYears: Estimate;
  /** What may be at work, and how likely. */
  readonly chances: CauseChances;
  /** Assumptions that raise the risk of the unit as found; the largest counts, since both speak of a hot compressor. */
  readonly riskKeys: readonly ('hotDischargeHazardRatio' | 'ailingHazardRatio')[];
  readonly nominalTons: number;
  /** Whether some repair puts in a new compressor, so that what this does to the risk varies. */
  readonly newCompressor: boolean;
  /** Whether the electricity price was assumed, and so varies. */
  readonly priceAssumed: boolean;
  readonly notes: readonly Saying[];
};

/**
 * What all choices share, from the visit or from assumptions.
 *
 * @param visit     the visit
 * @param findings  danger flags that name the discharge line, and the causes that may be at work, set the risk
 * @param energy    says whether the price was assumed
 * @returns the basis, with a note for each thing assumed
 * Stay: whole years; a part of a year counts as a whole one and a note says so; limits 1 to 25.
 * Check: tests/finance/money-basis.test.ts
 */
export function moneyBasis(visit: Visit, findings: Findings, energy: EnergyResult): MoneyBasis {
  const notes: Saying[] = [];
  const values = {} as Record<FinanceKey, Estimate>;
  for (const key of financeKeys) {
    const bounded = boundedAssumption(visit.assumptions, key);
    values[key] = bounded.value;
    if (bounded.note !== undefined) notes.push(bounded.note);
  }
  const stayYears = wholeStay(visit.site.stayYears, values.stayYears, notes);
  const ageYears = presentAge(visit, values.ageYears, notes);
  const chances = causeChances(findings);
  const riskKeys = risks(findings, chances, values, notes);
  if (chances.basis === 'suspicion') notes.push({ code: 'causesBySuspicion' });
  return {
    baseDate: visit.visitDate,
    stayYears,
    timing: visit.convention?.timing ?? 'endOfYear',
    residual: visit.convention?.residual ?? 'linear',
    values,
    ageYears,
    chances,
    riskKeys,
    nominalTons: visit.unit.nominalTons,
    newCompressor: visit.choices.some(renewsCompressor),
    priceAssumed: energy.priceBasis === 'assumed',
    notes,
  };
}

function wholeStay(given: number | undefined, assumed: Estimate, notes: Saying[]): number {
  const years = given ?? assumed.likely;
  const whole = Math.min(conventions.values.longestStayYears.value, Math.max(1, Math.ceil(years - 1e-9)));
  if (given === undefined) notes.push({ code: 'stayAssumed', values: { years: whole } });
  else if (whole !== given) notes.push({ code: 'stayRoundedUp', values: { given, years: whole } });
  return whole;
}

function presentAge(visit: Visit, assumed: Estimate, notes: Saying[]): Estimate {
  const made = visit.unit.manufactureYear;
  if (made !== undefined) return exactEstimate(Math.max(0, yearOf(visit.visitDate) - made));
  notes.push({ code: 'ageAssumed', values: { years: assumed.likely } });
  return assumed;
}

function risks(
  findings: Findings,
  chances: CauseChances,
  values: Readonly<Record<FinanceKey, Estimate>>,
  notes: Saying[],
): MoneyBasis['riskKeys'] {
  const keys: MoneyBasis['riskKeys'][number][] = [];
  if (findings.flags.some((f) => f.severity === 'danger' && f.readings.includes('dischargeLineF'))) {
    keys.push('hotDischargeHazardRatio');
    notes.push({ code: 'dischargeRaisesRisk', values: { ratio: values.hotDischargeHazardRatio.likely } });
  }
  const straining = chances.causes.filter(({ cause }) => hazardPower(cause) > 0);
  const worst = straining[0]?.cause;
  if (worst !== undefined) {
    keys.push('ailingHazardRatio');
    const ailing = values.ailingHazardRatio.likely;
    const mean = chances.causes.reduce((m, c) => m + c.frac * foundHazardRatio(1, ailing, c.cause), 0);
    const ratio = Math.round(mean * 100) / 100;
    if (ratio >= conventions.values.riskWorthTelling.value)
      notes.push({ code: 'faultRaisesRisk', values: { cause: worst, ratio } });
  }
  return keys;
}
