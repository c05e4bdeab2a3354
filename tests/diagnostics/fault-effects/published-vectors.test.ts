import { describe, expect, it } from 'vitest';
import { airflowRatios } from '@/lib/diagnostics/fault-effects/airflow-quadratic';
import { chargeRatios } from '@/lib/diagnostics/fault-effects/charge-laboratory';
import { airflowAfterCharge } from '@/lib/diagnostics/fault-effects/equivalent-airflow';
import { type FaultImpactSet, impactRatios } from '@/lib/diagnostics/fault-effects/fault-impact';
import vectors from '../../reference/fault-effects-vectors.json';
import '../support/matchers';
import { modeOf } from './mode-of';

// Outside values: the published coefficients worked out by a second implementation, printed to four decimals
// (tests/reference/fault-effects-vectors.json); tolerance half of the last decimal and a little.
const TOLERANCE = vectors.tolerance;

const impactRows = Object.entries(vectors.faultImpact).flatMap(([set, rows]) =>
  rows.map((row) => ({ set: set as FaultImpactSet, ...row })),
);

it('wiring: every test vector is there', () => {
  expect(vectors.chargeLaboratory).toHaveLength(42);
  expect(vectors.airflowQuadratic).toHaveLength(8);
  expect(vectors.combined).toHaveLength(5);
  expect(impactRows).toHaveLength(24);
});

describe('outside: charge correlation [NIST TN 1848 as carried in OpenStudio-HPXML]', () => {
  it.each(vectors.chargeLaboratory)('$mode, indoor $T_ID, outdoor $T_OD, F $F', (row) => {
    const at = { mode: modeOf(row.mode), indoorC: row.T_ID ?? 0, outdoorC: row.T_OD };
    const { capacityRatio, powerRatio } = chargeRatios(at, row.F);
    expect(capacityRatio).toBeCloseToWithin(row.Y_Q, TOLERANCE);
    expect(powerRatio).toBeCloseToWithin(row.Y_P, TOLERANCE);
    expect(capacityRatio / powerRatio).toBeCloseToWithin(row.Y_COP, TOLERANCE);
  });
});

describe('outside: airflow quadratic [Cutler and others 2013]', () => {
  it.each(vectors.airflowQuadratic)('airflow $f', (row) => {
    const cooling = airflowRatios('cooling', row.f);
    const heating = airflowRatios('heating', row.f);
    expect(cooling.capacityRatio).toBeCloseToWithin(row.cool_Y_Q, TOLERANCE);
    expect(cooling.eirRatio).toBeCloseToWithin(row.cool_EIR, TOLERANCE);
    expect(1 / cooling.eirRatio).toBeCloseToWithin(row.cool_Y_COP, TOLERANCE);
    expect(heating.capacityRatio).toBeCloseToWithin(row.heat_Y_Q, TOLERANCE);
    expect(heating.eirRatio).toBeCloseToWithin(row.heat_EIR, TOLERANCE);
    expect(1 / heating.eirRatio).toBeCloseToWithin(row.heat_Y_COP, TOLERANCE);
  });
});

describe('outside: charge with airflow [OpenStudio-HPXML, equivalent airflow]', () => {
  it.each(vectors.combined)('$mode, F $F, airflow $f', (row) => {
    const mode = modeOf(row.mode);
    const charge = chargeRatios({ mode, indoorC: row.T_ID ?? 0, outdoorC: row.T_OD }, row.F);
    const air = airflowAfterCharge(mode, row.F, row.f);
    const single = airflowRatios(mode, row.f);
    const chargeCop = charge.capacityRatio / charge.powerRatio;
    expect(air.airMultiplier).toBeCloseToWithin(row.g, 1e-9);
    expect(charge.capacityRatio * air.capacityRatio).toBeCloseToWithin(row.Y_Q, TOLERANCE);
    expect(chargeCop / air.eirRatio).toBeCloseToWithin(row.Y_COP, TOLERANCE);
    expect(charge.capacityRatio * single.capacityRatio).toBeCloseToWithin(
      row.product_of_singles_Y_Q,
      TOLERANCE,
    );
    expect(chargeCop / single.eirRatio).toBeCloseToWithin(row.product_of_singles_Y_COP, TOLERANCE);
  });
});

describe('outside: fault-impact correlation [NREL/SR-5500-65030]', () => {
  it.each(impactRows)('$set, F $F', (row) => {
    const at = { wetBulbC: row.T_wb, outdoorC: row.T_OD, ratedCop: row.COP_rated };
    const { capacityRatio, eirRatio } = impactRatios(row.set, at, row.F);
    expect(capacityRatio).toBeCloseToWithin(row.Y_Q, TOLERANCE);
    expect(eirRatio).toBeCloseToWithin(row.EIR, TOLERANCE);
    expect(capacityRatio * eirRatio).toBeCloseToWithin(row.Y_P, 1e-4);
    expect(1 / eirRatio).toBeCloseToWithin(row.Y_COP, TOLERANCE);
  });
});

describe('outside: signs of the fault level differ by source', () => {
  it('missing charge is negative in one set and positive in the other, and both lose capacity', () => {
    const laboratory = chargeRatios({ mode: 'cooling', indoorC: 26.7, outdoorC: 35 }, -0.2);
    const impact = impactRatios('splitUndercharge', { wetBulbC: 19.4, outdoorC: 35, ratedCop: 5.7 }, 0.2);
    expect(laboratory.capacityRatio).toBeCloseToWithin(0.8882, TOLERANCE);
    expect(impact.capacityRatio).toBeCloseToWithin(0.9102, TOLERANCE);
  });
});
