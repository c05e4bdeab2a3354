import { describe, expect, it } from 'vitest';
import { diagnose } from '@/lib/diagnostics/diagnose';
import type { Findings } from '@/lib/diagnostics/findings';
import { refrigerantProperties } from '@/lib/diagnostics/refrigerant/properties';
import type { Unit } from '@/lib/visit/unit';
import { healthyOf, type RunPart, visitOf } from '../support/visit-of';

const unit = { metering: 'fixedOrifice', manufactureYear: 2013, electricHeatKw: 10 } as const;

const cooling = {
  mode: 'cooling',
  suctionPsig: 105,
  dischargePsig: 300,
  suctionLineF: 75,
  dischargeLineF: 190,
  liquidLineF: 93,
  outdoorAirF: 90,
  returnAirF: 76,
  returnWetBulbF: 63,
  supplyAirF: 62,
  outdoorUnitA: 11,
  lineV: 238,
} as const satisfies RunPart;

const heating = {
  mode: 'heating',
  suctionPsig: 62,
  dischargePsig: 255,
  suctionLineF: 45.5,
  dischargeLineF: 178,
  liquidLineF: 82,
  outdoorAirF: 35,
  returnAirF: 68,
  supplyAirF: 84,
  outdoorUnitA: 8.1,
  lineV: 238,
} as const satisfies RunPart;

function findingsOf(run: RunPart, part: Partial<Unit> = {}): Findings {
  const visit = visitOf([run], { ...unit, ...part });
  const { refrigerant } = visit.unit;
  const properties = refrigerant === undefined ? undefined : refrigerantProperties(refrigerant);
  return diagnose({ visit, healthy: healthyOf(visit), properties });
}

const impossible: readonly (readonly [string, RunPart, Partial<Unit>, string])[] = [
  ['liquid line above condensing', { ...cooling, liquidLineF: 120 }, {}, 'liquidWarmerThanCondensing'],
  ['suction line below saturation', { ...cooling, suctionLineF: 25 }, {}, 'suctionColderThanSaturation'],
  ['head at 650 psig', { ...cooling, dischargePsig: 650 }, {}, 'dischargeCoolerThanLossless'],
  ['discharge line at 340 F', { ...cooling, dischargeLineF: 340 }, {}, 'dischargeTooHotForPressures'],
  ['another refrigerant', heating, { refrigerant: 'R-407C' }, 'evaporatingAboveAir'],
];

describe('readings that cannot all be true', () => {
  it.each(impossible)(
    'regression: %s: no cause is found, the conflict is named and read again first',
    (...row) => {
      const [, run, part, code] = row;
      const { causes, flags } = findingsOf(run, part);
      const flag = flags.find((one) => one.code === code);
      expect(flag?.severity).toBe('conflict');
      expect(causes?.verdict).toBe('unclear');
      const readings = flag?.readings.join(', ');
      expect(causes?.notes).toContainEqual({ code: 'unclearByConflict', values: { readings } });
      expect(causes?.nextReadings[0]?.saying).toEqual({ code: 'next.readAgain', values: { readings } });
      expect(causes?.byRun.map(({ verdict }) => verdict)).toEqual(['unclear']);
    },
  );

  it('identity: without a conflict the same readings find their cause', () => {
    expect(findingsOf(cooling).causes?.verdict).toBe('found');
    expect(findingsOf(heating).causes?.verdict).toBe('found');
  });

  it('property: how far wrong a reading in conflict is, no longer matters', () => {
    const at = (liquidLineF: number) => findingsOf({ ...cooling, liquidLineF }).causes?.causes;
    expect(at(112)).toEqual(at(140));
  });

  it('identity: a part of its own is found beside readings in conflict, which are named', () => {
    const weak = { ...cooling, liquidLineF: 120, compressorCapUf: 32, compressorCapRatedUf: 45 };
    const { causes } = findingsOf(weak);
    expect(causes?.verdict).toBe('found');
    expect(causes?.causes[0]?.cause).toBe('runCapacitorWeak');
    expect(causes?.notes.map(({ code }) => code)).toContain('conflictLeftOut');
  });

  it('property: a discharge line beyond the tables is flagged from where the efficiency leaves off', () => {
    const told = [230, 260, 300, 320, 340, 400].map((dischargeLineF) =>
      findingsOf({ ...cooling, dischargeLineF }).flags.some(
        ({ code }) => code === 'efficiencyTooLow' || code === 'dischargeTooHotForPressures',
      ),
    );
    expect(told).toEqual([false, true, true, true, true, true]);
  });
});

describe('what is asked next', () => {
  it('regression: electric heat is never measured in a cooling run', () => {
    const codes = (run: RunPart) => findingsOf(run).causes?.nextReadings.map(({ saying }) => saying.code);
    expect(codes(cooling)).not.toContain('next.stripAmps');
    expect(codes({ ...cooling, suctionPsig: 125, suctionLineF: 52 })).not.toContain('next.stripAmps');
  });

  it('regression: without properties nothing is asked that needs them', () => {
    const visit = visitOf([cooling], { ...unit, otherRefrigerant: 'R-407A' });
    const { refrigerant: _none, ...rest } = visit.unit;
    const unlisted = { ...visit, unit: rest };
    const { causes } = diagnose({ visit: unlisted, healthy: healthyOf(unlisted) });
    const codes = causes?.nextReadings.map(({ saying }) => saying.code) ?? [];
    expect(codes).toContain('next.drierDrop');
    expect(codes).toContain('next.otherMode');
    const needing = ['superheat', 'subcooling', 'evaporating', 'condensing', 'discharge', 'standingPressure'];
    expect(codes.filter((code) => needing.some((id) => code === `next.${id}`))).toEqual([]);
  });
});

describe('no fault found', () => {
  it('regression: readings off their targets are not told as a healthy unit', () => {
    const healthy = {
      mode: 'cooling',
      suctionPsig: 125,
      dischargePsig: 340,
      suctionLineF: 54,
      dischargeLineF: 160,
      liquidLineF: 98,
      outdoorAirF: 88,
      returnAirF: 76,
      returnWetBulbF: 63,
    } as const satisfies RunPart;
    const of = (liquidLineF: number) => {
      const { causes, runs } = findingsOf({ ...healthy, liquidLineF }, { nameplateSubcoolingFd: 10 });
      const off = runs[0]?.targets.filter(({ verdict }) => verdict === 'above' || verdict === 'below') ?? [];
      return [causes?.verdict, off.length > 0, causes?.isOffTarget ?? false];
    };
    expect(of(98)).toEqual(['noFaultFound', true, true]);
    expect(of(96)).toEqual(['noFaultFound', false, false]);
  });
});
