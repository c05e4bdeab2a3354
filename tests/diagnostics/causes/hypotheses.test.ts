import { describe, expect, it } from 'vitest';
import observations from '@/lib/diagnostics/causes/data/observations.json';
import priors from '@/lib/diagnostics/causes/data/priors.json';
import { hypothesesOf, observationRatio, partOf, possibleCauses } from '@/lib/diagnostics/causes/hypotheses';
import { CauseId } from '@/lib/visit/cause';
import { ObservationId } from '@/lib/visit/observation';
import '../support/matchers';
import { visitOf } from '../support/visit-of';

describe('hypotheses', () => {
  it('identity: an air conditioner has no reversing valve, a unit without strips no strip fault', () => {
    const cooler = visitOf([], { kind: 'airConditioner' });
    expect(possibleCauses(cooler)).not.toContain('reversingValveLeaking');
    expect(possibleCauses(cooler)).not.toContain('supplementaryHeatFault');
    expect(possibleCauses(visitOf([], { electricHeatKw: 0 }))).not.toContain('supplementaryHeatFault');
    expect(possibleCauses(visitOf([]))).toHaveLength(11);
  });

  it('identity: nothing wrong, 11 causes at 3 severities, 55 pairs at 2 x 2', () => {
    const found = hypothesesOf(visitOf([]));
    expect(found).toHaveLength(1 + 33 + 55 * 4);
    expect(found[0]?.parts).toEqual([]);
    expect(found.filter(({ lnPrior }) => !Number.isFinite(lnPrior))).toEqual([]);
    expect(new Set(found.map(({ parts }) => parts.map((part) => part.key).join('+'))).size).toBe(
      found.length,
    );
  });

  it('identity: prior odds of a cause over all severities are those of the table', () => {
    const found = hypothesesOf(visitOf([]));
    const total = found
      .filter(({ parts }) => parts.length === 1 && parts[0]?.cause === 'lowCharge')
      .reduce((sum, { lnPrior }) => sum + Math.exp(lnPrior), 0);
    expect(total).toBeCloseToWithin(priors.causes.lowCharge.prior / priors.causes.none.prior, 1e-9);
  });

  it('identity: what was seen multiplies the odds, once however often it was noted', () => {
    const weight = (observations: { id: 'oilStain' }[]) =>
      hypothesesOf(visitOf([], {}, { observations })).find(({ parts }) => parts[0]?.key === 'lowCharge mild')
        ?.lnPrior ?? Number.NaN;
    const ratio = observationRatio('lowCharge', { id: 'oilStain' });
    expect(ratio).toBeGreaterThan(1);
    expect(weight([{ id: 'oilStain' }]) - weight([])).toBeCloseToWithin(Math.log(ratio), 1e-12);
    expect(weight([{ id: 'oilStain' }, { id: 'oilStain' }])).toBe(weight([{ id: 'oilStain' }]));
    expect(observationRatio('overcharge', { id: 'oilStain' })).toBe(1);
    expect(observationRatio('none', { id: 'neverKeepsUp' })).toBeLessThan(1);
  });

  it.each([
    ['bulgedCapacitor', 'runCapacitorWeak'],
    ['frozenIndoorCoil', 'lowIndoorAirflow'],
    ['frozenIndoorCoil', 'lowCharge'],
    ['frozenIndoorCoil', 'meteringRestriction'],
    ['blowerNotRunning', 'lowIndoorAirflow'],
    ['escapingRefrigerant', 'lowCharge'],
    ['compressorKnocks', 'compressorValvesLeaking'],
  ] as const)('identity: %s speaks for %s', (id, cause) => {
    expect(observationRatio(cause, { id })).toBeGreaterThan(1);
    expect(observationRatio('none', { id })).toBe(1);
  });

  it('identity: a frozen coil tells what frost on its suction line would: seen both, counted once', () => {
    const weight = (ids: readonly ObservationId[]) => {
      const visit = visitOf([], {}, { observations: ids.map((id) => ({ id })) });
      return hypothesesOf(visit).find(({ parts }) => parts[0]?.key === 'lowCharge mild')?.lnPrior;
    };
    expect(weight(['frozenIndoorCoil', 'frostOnSuctionLine'])).toBe(weight(['frozenIndoorCoil']));
    expect(weight(['frozenIndoorCoil'])).not.toBe(weight([]));
    expect(weight(['frozenIndoorCoil', 'oilStain'])).not.toBe(weight(['frozenIndoorCoil']));
  });

  it('wiring: every observation has a row, or is said to say nothing, with source and status', () => {
    const rows: Record<string, { ratios: object; source: string; status: string; covers?: string[] }> =
      observations.rows;
    const silent: Record<string, { why: string; status: string }> = observations.silent;
    const told = [...Object.keys(rows), ...Object.keys(silent)];
    expect([...told].sort()).toEqual([...ObservationId.options].sort());
    expect(Object.values(rows).filter((row) => !row.source || !row.status)).toEqual([]);
    expect(Object.values(silent).filter((row) => !row.why || !row.status)).toEqual([]);
    const named = Object.values(rows).flatMap((row) => Object.keys(row.ratios));
    expect(named.filter((cause) => !CauseId.options.some((id) => id === cause))).toEqual([]);
    const covered = Object.values(rows).flatMap((row) => row.covers ?? []);
    expect(covered.filter((id) => rows[id] === undefined)).toEqual([]);
  });

  // A laboratory study found dirt seen on outdoor coils proved no loss on average (secondary).
  it('outside: a dirty look of the outdoor coil is weak evidence', () => {
    expect(observationRatio('outdoorCoilFouled', { id: 'dirtyOutdoorCoil' })).toBeLessThanOrEqual(1.5);
  });

  it('wiring: every prior has a source and a status', () => {
    const rows = Object.values(priors.causes);
    expect(rows).toHaveLength(12);
    expect(rows.filter((row) => !row.source || !row.status || !(row.prior > 0))).toEqual([]);
    expect(partOf('lowCharge', 'mild').key).toBe('lowCharge mild');
  });
});
