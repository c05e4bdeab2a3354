import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { derivedById, deriveRun } from '@/lib/diagnostics/derived/derive-run';
import { diagnose } from '@/lib/diagnostics/diagnose';
import { baroPsiaAtAltitude, psiaToPsig } from '@/lib/diagnostics/refrigerant/gauge';
import { refrigerantProperties } from '@/lib/diagnostics/refrigerant/properties';
import { isTarget } from '@/lib/diagnostics/targets/build-target';
import { healthyCondensing, healthyEvaporating } from '@/lib/diagnostics/targets/healthy-pressures';
import { healthyAt } from '@/lib/diagnostics/targets/healthy-state';
import {
  dischargeTarget,
  healthySuperheat,
  subcoolingTarget,
  superheatTarget,
} from '@/lib/diagnostics/targets/refrigerant-targets';
import { RefrigerantName } from '@/lib/visit/refrigerant-names';
import type { Unit } from '@/lib/visit/unit';
import '../support/matchers';
import { contextOfRun, healthyOf, type RunPart, visitOf } from '../support/visit-of';
import { causesFrom } from './diagnosed';

type Day = {
  readonly mode: 'cooling' | 'heating';
  readonly hotFrac: number;
  readonly returnAirF: number;
  readonly humidFrac: number;
  readonly altitudeFt: number;
};

const anyDay: fc.Arbitrary<Day> = fc.record({
  mode: fc.constantFrom('cooling' as const, 'heating' as const),
  hotFrac: fc.double({ min: 0, max: 1, noNaN: true }),
  returnAirF: fc.double({ min: 68, max: 78, noNaN: true }),
  humidFrac: fc.double({ min: 0, max: 1, noNaN: true }),
  altitudeFt: fc.double({ min: 0, max: 7_000, noNaN: true }),
});

const anyUnit = fc.record({
  refrigerant: fc.constantFrom(...RefrigerantName.options),
  metering: fc.constantFrom('txv' as const, 'fixedOrifice' as const),
  seerBtuPerWh: fc.double({ min: 10, max: 18, noNaN: true }),
});

/** Readings of a run, each exactly at its target: cooling at 68-108 F, heating at 20-62 F outdoors. */
function atTarget(day: Day, unit: Partial<Unit>): RunPart {
  const { mode, hotFrac, returnAirF, humidFrac, altitudeFt } = day;
  const site = { site: { altitudeFt } };
  const conditions: RunPart =
    mode === 'cooling'
      ? { mode, outdoorAirF: 68 + 40 * hotFrac, returnAirF, returnWetBulbF: returnAirF - 14 + 5 * humidFrac }
      : { mode, outdoorAirF: 20 + 42 * hotFrac, returnAirF };
  const context = contextOfRun(conditions, unit, site);
  const p = refrigerantProperties(unit.refrigerant ?? 'R-410A');
  const evaporatingF = healthyEvaporating(context)?.temperatureF ?? Number.NaN;
  const condensingF = healthyCondensing(context)?.temperatureF ?? Number.NaN;
  const psig = (psia: number | object) => psiaToPsig(Number(psia), baroPsiaAtAltitude(altitudeFt));
  const highPsia = highSidePsia(p, condensingF);
  const superheat = superheatTarget(context);
  const tabled = unit.metering === 'fixedOrifice' && isTarget(superheat);
  const superheatFd = tabled ? superheat.value : healthySuperheat(context).value;
  const subcooling = subcoolingTarget(context);
  const usualSubcoolingFd = unit.metering === 'txv' ? 11 : 8;
  const subcoolingFd = isTarget(subcooling) ? subcooling.value : usualSubcoolingFd;
  const run: RunPart = {
    ...conditions,
    runningMinutes: 20,
    suctionPsig: psig(p.dewPsia(evaporatingF)),
    liquidPsig: psig(highPsia),
    suctionLineF: evaporatingF + superheatFd,
    liquidLineF: Number(p.bubbleF(highPsia)) - subcoolingFd,
    outdoorUnitW: healthyAt(context)?.outdoorUnitW ?? Number.NaN,
    airflowCfm: 1_200,
  };
  const discharge = dischargeTarget(contextOfRun(run, unit, site));
  return discharge !== undefined && isTarget(discharge) ? { ...run, dischargeLineF: discharge.value } : run;
}

/** Pressure at which the mean of bubble and dew is the condensing temperature. */
function highSidePsia(p: ReturnType<typeof refrigerantProperties>, condensingF: number): number {
  let [low, high] = [Number(p.dewPsia(condensingF)), Number(p.bubblePsia(condensingF))];
  for (let i = 0; i < 50; i += 1) {
    const middle = (low + high) / 2;
    if ((Number(p.dewF(middle)) + Number(p.bubbleF(middle))) / 2 < condensingF) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

describe('a run with every reading at its target', () => {
  it('property: no fault found, whatever the day, refrigerant, metering and altitude', () => {
    fc.assert(
      fc.property(anyDay, anyUnit, (day, { refrigerant, metering, seerBtuPerWh }) => {
        const unit = { refrigerant, metering, ratings: { seerBtuPerWh, hspfBtuPerWh: 8.2 } };
        const run = atTarget(day, unit);
        const { verdict, noFaultProbability, causes } = causesFrom(
          visitOf([run], unit, { site: { altitudeFt: day.altitudeFt } }),
        ).found;
        expect(verdict).toBe('noFaultFound');
        expect(noFaultProbability).toBeGreaterThan(0.5);
        expect(causes.filter(({ probability }) => probability >= 0.3)).toEqual([]);
      }),
      { seed: 51, numRuns: 250 },
    );
  });

  it('property: the same absolute pressures read at another altitude say the same of the refrigerant', () => {
    fc.assert(
      fc.property(anyDay, anyUnit, fc.double({ min: 0, max: 9_000, noNaN: true }), (day, unit, otherFt) => {
        const run = atTarget(day, unit);
        const shiftPsi = baroPsiaAtAltitude(day.altitudeFt) - baroPsiaAtAltitude(otherFt);
        const there: RunPart = {
          ...run,
          suctionPsig: (run.suctionPsig ?? Number.NaN) + shiftPsi,
          liquidPsig: (run.liquidPsig ?? Number.NaN) + shiftPsi,
        };
        const values = (part: RunPart, altitudeFt: number) => {
          const derived = deriveRun(contextOfRun(part, unit, { site: { altitudeFt } }));
          return REFRIGERANT_SIDE.map((id) => derivedById(derived, id)?.value ?? Number.NaN);
        };
        const [here, moved] = [values(run, day.altitudeFt), values(there, otherFt)];
        const apart = here.map((value, i) => Math.abs(value - (moved[i] ?? Number.NaN)));
        expect(Math.max(...apart)).toBeLessThan(1e-8);
      }),
      { seed: 52, numRuns: 100 },
    );
  });
});

const REFRIGERANT_SIDE = [
  'evaporatingF',
  'condensingF',
  'suctionSuperheatFd',
  'liquidSubcoolingFd',
  'compressionRatio',
] as const;

describe('order of runs', () => {
  /** Off target by this much, so that every run says something of its own. */
  const offBy = fc.record({
    suction: fc.double({ min: -40, max: 25, noNaN: true }),
    liquidLine: fc.double({ min: -12, max: 8, noNaN: true }),
    watts: fc.double({ min: 0.8, max: 1.3, noNaN: true }),
  });

  it('property: how runs of both modes are mixed does not matter, as long as each mode keeps its own order', () => {
    fc.assert(
      fc.property(
        anyDay,
        fc.array(offBy, { minLength: 3, maxLength: 3 }),
        fc.shuffledSubarray([0, 1, 2], { minLength: 3, maxLength: 3 }),
        (day, offs, places) => {
          const unit = { ratings: { seerBtuPerWh: 14, hspfBtuPerWh: 8.2 } };
          const runs = offs.map((off, i): RunPart => {
            const mode = i === 2 ? ('heating' as const) : ('cooling' as const);
            const at = atTarget({ ...day, mode }, unit);
            return {
              ...at,
              id: `run-${i}`,
              suctionPsig: (at.suctionPsig ?? 0) + off.suction,
              liquidLineF: (at.liquidLineF ?? 0) + off.liquidLine,
              outdoorUnitW: (at.outdoorUnitW ?? 0) * off.watts,
            };
          });
          // the two cooling runs stay in order, the heating run goes anywhere
          const heatingAt = places.indexOf(2);
          const mixed = runs.slice(0, 2);
          mixed.splice(heatingAt, 0, ...runs.slice(2));
          const found = (list: readonly RunPart[]) => {
            const visit = visitOf(list, unit);
            return diagnose({
              visit,
              healthy: healthyOf(visit),
              properties: refrigerantProperties('R-410A'),
            });
          };
          const [forth, back] = [found(runs), found(mixed)];
          expect(back.causes?.verdict).toBe(forth.causes?.verdict);
          expect(back.causes?.resolved).toEqual(forth.causes?.resolved);
          const byId = (list: typeof forth.runs) => [...list].sort((a, b) => (a.runId < b.runId ? -1 : 1));
          expect(byId(back.runs)).toEqual(byId(forth.runs));
          const numbers = ({ loss, causes }: typeof forth) => [
            ...[loss.cooling, loss.heating].flatMap((one) => [one?.lnCapacity, one?.lnPower]),
            ...(causes?.causes ?? []).map(({ probability }) => ({ mean: probability, sd: 0 })),
          ];
          const there = numbers(back);
          const apart = numbers(forth).flatMap((one, i) => [
            Math.abs((one?.mean ?? 9) - (there[i]?.mean ?? 99)),
            Math.abs((one?.sd ?? 9) - (there[i]?.sd ?? 99)),
          ]);
          expect(Math.max(...apart)).toBeLessThan(1e-9);
        },
      ),
      { seed: 53, numRuns: 40 },
    );
  });
});
