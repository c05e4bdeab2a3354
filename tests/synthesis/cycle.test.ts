import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RefrigerantName } from '@/lib/visit/refrigerant-names';
import { calibrateUnit } from '../../scripts/synthesis/calibrate';
import type { SimulatedUnit } from '../../scripts/synthesis/circuit';
import { circuitOf, operationOf } from '../../scripts/synthesis/operation';
import { steadyState } from '../../scripts/synthesis/steady';
import { synthesise } from '../../scripts/synthesis/synthesise';
import type { Conditions, ImposedFault } from '../../scripts/synthesis/unit-spec';

const cooling: Conditions = { mode: 'cooling', outdoorF: 91, returnF: 77, returnWetBulbF: 65 };
const heating: Conditions = { mode: 'heating', outdoorF: 43, returnF: 70 };

function unitOf(refrigerant: RefrigerantName, metering: 'fixedOrifice' | 'txv'): SimulatedUnit {
  return calibrateUnit({
    kind: 'heatPump',
    refrigerant,
    metering,
    nominalTons: 3,
    seer: 13,
    compressor: 'scroll',
    blower: 'psc',
  });
}

/** One fault of every kind that touches the circuit. */
const everyFault: readonly ImposedFault[] = [
  { fault: 'lowCharge', level: 0.15 },
  { fault: 'overcharge', level: 0.15 },
  { fault: 'liquidLineRestriction', level: 0.3 },
  { fault: 'meteringRestriction', level: 0.2 },
  { fault: 'closedRegisters', level: 0.25 },
  { fault: 'dirtyIndoorCoil', level: 0.2 },
  { fault: 'outdoorCoilFouled', level: 0.25 },
  { fault: 'nonCondensables', level: 0.06 },
  { fault: 'compressorValvesLeaking', level: 0.2 },
  { fault: 'reversingValveLeaking', level: 0.06 },
  { fault: 'runCapacitorWeak', level: 0.15 },
];

describe('steady state', () => {
  it('identity: energy closes within 0.1 % for every refrigerant, mode and fault', () => {
    let checked = 0;
    for (const [i, refrigerant] of RefrigerantName.options.entries()) {
      const unit = unitOf(refrigerant, i % 2 === 0 ? 'fixedOrifice' : 'txv');
      for (const conditions of [cooling, heating]) {
        for (const fault of everyFault) {
          const circuit = circuitOf(unit, conditions.mode);
          const state = steadyState(unit, circuit, operationOf(unit, conditions, [fault]));
          const into =
            state.evaporator.heatBtuh + state.lineGainBtuh + 0.93 * state.compression.powerW * 3.412141633;
          const out = state.condenser.heatBtuh + state.gasLineLossBtuh;
          expect(Math.abs(into / out - 1)).toBeLessThan(1e-3);
          expect(Math.max(...state.misses.map(Math.abs))).toBeLessThan(1e-7);
          checked += 1;
        }
      }
    }
    expect(checked).toBe(132);
  });

  it('property: a larger fault never gives back capacity, where all sources agree that it costs', () => {
    const costly = [
      'lowCharge',
      'closedRegisters',
      'outdoorCoilFouled',
      'compressorValvesLeaking',
      'reversingValveLeaking',
    ] as const;
    const unit = unitOf('R-410A', 'txv');
    for (const fault of costly) {
      const most = fault === 'reversingValveLeaking' ? 0.1 : 0.3;
      const ratios = [0.33, 0.66, 1].map(
        (share) => synthesise(unit, cooling, [{ fault, level: share * most }]).truth.capacityRatioToHealthy,
      );
      expect(ratios[0]).toBeLessThan(1.002);
      expect(ratios[1]).toBeLessThanOrEqual((ratios[0] ?? 0) + 1e-6);
      expect(ratios[2]).toBeLessThanOrEqual((ratios[1] ?? 0) + 1e-6);
    }
    expect.assertions(15);
  });

  it('property: every healthy condition in range has a steady state, and capacity falls with outdoor heat', () => {
    const unit = unitOf('R-410A', 'txv');
    fc.assert(
      fc.property(
        fc.double({ min: 68, max: 104, noNaN: true }),
        fc.double({ min: 70, max: 82, noNaN: true }),
        fc.double({ min: 7, max: 15, noNaN: true }),
        (outdoorF, returnF, depressionF) => {
          const at = (f: number): number =>
            synthesise(
              unit,
              { mode: 'cooling', outdoorF: f, returnF, returnWetBulbF: returnF - depressionF },
              [],
            ).truth.capacityBtuh;
          return at(outdoorF) > at(outdoorF + 4);
        },
      ),
      { numRuns: 8, seed: 20261105 },
    );
  });

  it('property: gauge readings and truth agree at altitude', () => {
    const unit = unitOf('R-22', 'fixedOrifice');
    const high = synthesise(unit, { ...cooling, altitudeFt: 5400 }, []).truth;
    const sea = synthesise(unit, cooling, []).truth;
    const lowF = unit.fluid.dewF((high.readings.suctionPsig ?? 0) + 12.04);
    const seaF = unit.fluid.dewF((sea.readings.suctionPsig ?? 0) + 14.696);
    expect(Math.abs(lowF - seaF)).toBeLessThan(5);
    expect(high.capacityBtuh).toBeLessThan(sea.capacityBtuh);
  });

  it('property: a fault too large to run is refused, not invented', () => {
    expect(() =>
      synthesise(unitOf('R-410A', 'fixedOrifice'), cooling, [{ fault: 'meteringRestriction', level: 0.97 }]),
    ).toThrow(/no steady state/);
  });

  it('property: an air conditioner has no heating run', () => {
    const unit = calibrateUnit({ ...unitOf('R-410A', 'txv').spec, kind: 'airConditioner' });
    expect(() => synthesise(unit, heating, [])).toThrow(/no heating mode/);
  });
});
