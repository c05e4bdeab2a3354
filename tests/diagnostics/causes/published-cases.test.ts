import { describe, expect, it } from 'vitest';
import { derivedById, deriveRun } from '@/lib/diagnostics/derived/derive-run';
import { diagnose } from '@/lib/diagnostics/diagnose';
import { refrigerantProperties } from '@/lib/diagnostics/refrigerant/properties';
import type { Unit } from '@/lib/visit/unit';
import reference from '../../reference/field-cases.json';
import '../support/matchers';
import { contextOfRun, healthyOf, type RunPart, visitOf } from '../support/visit-of';
import { causesFrom } from './diagnosed';

// Real readings with a published answer (tests/reference/field-cases.json, with source and status each): the five of its
// 17 cases that carry readings of one unit. The savings, surveys and summaries are in published-summaries.test.ts.

const psiAtmosphere = 14.696;

function saturationPsig(refrigerant: 'R-22' | 'R-410A', temperatureF: number): number {
  return Number(refrigerantProperties(refrigerant).dewPsia(temperatureF)) - psiAtmosphere;
}

function found(run: RunPart, unit: Partial<Unit>) {
  return causesFrom(visitOf([run], unit)).found;
}

function chanceOf(answer: ReturnType<typeof found>, cause: string): number {
  return answer.causes.find((c) => c.cause === cause)?.probability ?? 0;
}

describe('published field cases', () => {
  it('outside: the file holds 17 cases', () => {
    expect(reference.cases).toHaveLength(17);
  });

  // ACCA technical blog 2012, read: 260 psig, 120 F condensing, 100 F out, 88 psig, 53 F, suction line 70 F, 240 F
  // discharge, 80 F outdoors. Published answer: overcharge. The page prints 27 F of total superheat; its own
  // temperatures give 70 - 53 = 17 F: the printed superheat contradicts them by five times the uncertainty.
  it('outside: overcharged R-22 split: derived values, and the printed superheat its own temperatures contradict', () => {
    const printedFd = 27;
    const run: RunPart = {
      mode: 'cooling',
      dischargePsig: 260,
      liquidLineF: 100,
      suctionPsig: 88,
      suctionLineF: 70,
      dischargeLineF: 240,
      outdoorAirF: 80,
      returnAirF: 84,
      lineV: 240,
    };
    const context = contextOfRun(run, { refrigerant: 'R-22', metering: 'fixedOrifice' });
    const values = deriveRun(context);
    const value = (id: string) => derivedById(values, id);
    expect(value('condensingF')?.value).toBeCloseToWithin(120, 0.5);
    expect(value('evaporatingF')?.value).toBeCloseToWithin(53, 0.8);
    expect(value('liquidSubcoolingFd')?.value).toBeCloseToWithin(20, 0.5);
    expect(value('compressionRatio')?.value).toBeCloseToWithin(2.67, 0.01);
    const superheat = value('suctionSuperheatFd');
    expect(superheat?.value).toBeCloseToWithin(17, 0.8);
    expect(Math.abs(printedFd - (superheat?.value ?? 0)) / (superheat?.sd ?? 99)).toBeGreaterThan(5);
    const flagsWith = (statedSuperheatFd: number) => {
      const visit = visitOf([{ ...run, statedSuperheatFd }], {
        refrigerant: 'R-22',
        metering: 'fixedOrifice',
      });
      return diagnose({ visit, healthy: healthyOf(visit), properties: context.properties }).flags;
    };
    const flags = flagsWith(printedFd);
    expect(flags.map(({ code }) => code)).toContain('statedSuperheatContradicted');
    expect(flagsWith(17).map(({ code }) => code)).not.toContain('statedSuperheatContradicted');
    expect(flags[0]).toMatchObject({ code: 'dischargeLineTooHot', severity: 'danger' });
  });

  it('outside: the overcharge of that case is among the first causes; its high superheat speaks against it', () => {
    const run: RunPart = {
      mode: 'cooling',
      dischargePsig: 260,
      liquidLineF: 100,
      suctionPsig: 88,
      // superheat at the coil, the one the answer was given from: 58 - 53 F
      suctionLineF: 58,
      outdoorAirF: 80,
      returnAirF: 84,
    };
    const answer = found(run, {
      refrigerant: 'R-22',
      metering: 'fixedOrifice',
      ratings: { seerBtuPerWh: 10 },
    });
    expect(answer.causes.slice(0, 2).map(({ cause }) => cause)).toContain('overcharge');
  });

  // Trade article on clogged driers, 2023, read: 22 F evaporating, 66.7 F vapour, 97 F condensing, 82.6 F liquid:
  // 44.7 F superheat, 14.4 F subcooling, a liquid-line restriction and not low charge.
  it('outside: clogged liquid-line drier: superheat, subcooling, and a restriction rather than low charge', () => {
    const run: RunPart = {
      mode: 'cooling',
      suctionPsig: saturationPsig('R-22', 22),
      suctionLineF: 66.7,
      dischargePsig: saturationPsig('R-22', 97),
      liquidLineF: 82.6,
      outdoorAirF: 75,
      returnAirF: 75,
      returnWetBulbF: 63,
    };
    const unit = { refrigerant: 'R-22', metering: 'fixedOrifice', ratings: { seerBtuPerWh: 10 } } as const;
    const values = deriveRun(contextOfRun(run, unit));
    expect(derivedById(values, 'suctionSuperheatFd')?.value).toBeCloseToWithin(44.7, 0.1);
    expect(derivedById(values, 'liquidSubcoolingFd')?.value).toBeCloseToWithin(14.4, 0.1);
    const answer = found(run, unit);
    const restricted = chanceOf(answer, 'liquidLineRestriction') + chanceOf(answer, 'meteringRestriction');
    expect(restricted).toBeGreaterThan(0.8);
    expect(chanceOf(answer, 'lowCharge')).toBeLessThan(0.3);
    // which of the two only the drop over the drier can tell, and it is what is asked for
    expect(answer.causes.filter(({ standing }) => standing === 'confirmed')).toEqual([]);
    expect(answer.nextReadings[0]?.saying.code).toBe('next.drierDrop');
    const dropped = found({ ...run, liquidBeforeMeteringF: 76 }, unit);
    expect(dropped.causes[0]?.cause).toBe('liquidLineRestriction');
  });

  // Manufacturer's service manual, read: normal suction and liquid pressures of 14 SEER R-410A units at 80/67 F
  // return, 65-115 F outdoors. Healthy: no cause may be named.
  it.each(['3_ton_HP', '3_ton_AC', '2_ton_HP'] as const)(
    'outside: normal pressures of a healthy %s name no cause',
    (name) => {
      const rows = reference.cases.find(({ id }) => id === 'case-pressures-14seer')
        ?.inputs as unknown as Record<string, number[]>;
      const named = (rows.outdoor_f ?? []).flatMap((outdoorAirF, i) => {
        const run: RunPart = {
          mode: 'cooling',
          outdoorAirF,
          returnAirF: 80,
          returnWetBulbF: 67,
          suctionPsig: rows[`${name}_suction`]?.[i] ?? Number.NaN,
          dischargePsig: rows[`${name}_liquid`]?.[i] ?? Number.NaN,
        };
        const posterior = causesFrom(
          visitOf([run], { ratings: { seerBtuPerWh: 14 }, kind: 'airConditioner' }),
        );
        const [top] = [...posterior.asFound.chances]
          .filter(([cause]) => cause !== 'none')
          .sort((a, b) => b[1] - a[1]);
        return [{ outdoorAirF, verdict: posterior.found.verdict, chance: top?.[1] ?? 0 }];
      });
      expect(named).toHaveLength(12);
      expect(named.filter(({ verdict, chance }) => verdict === 'found' || chance >= 0.5)).toEqual([]);
    },
  );

  // Trade magazine 2006, read: R-410A heat pump cooling at 85 F: 64 psig and 70 F at the compressor, amps low. Best
  // answers named the expansion valve and the reversing valve (text cut off).
  it('outside: starving R-410A coil: 58.8 F superheat; a restriction or low charge, not an overfed coil', () => {
    const run: RunPart = {
      mode: 'cooling',
      suctionPsig: 64,
      suctionLineF: 70,
      outdoorAirF: 85,
      returnAirF: 75,
      returnWetBulbF: 63,
    };
    const answer = found(run, { metering: 'txv' });
    const starving = ['meteringRestriction', 'liquidLineRestriction', 'lowCharge'];
    expect(starving).toContain(answer.causes[0]?.cause ?? answer.nextReadings[0]?.outcomes[0]?.cause);
    expect(chanceOf(answer, 'overcharge')).toBeLessThan(0.1);
  });

  // Manufacturer's manual of a water-source unit, read: classes of superheat, subcooling and discharge only (its
  // condenser is water-cooled). Read as departures from its own normal column.
  it('outside: the four columns of the water-source chart lead to their causes by direction', () => {
    const normal = { subcooling: 11, superheat: 10, discharge: 145 };
    const columns = [
      ['overcharge', { subcooling: 22.5, superheat: 10, discharge: 125 }],
      ['lowCharge', { subcooling: 7, superheat: 27.5, discharge: 205 }],
      ['meteringRestriction', { subcooling: 17.5, superheat: 27.5, discharge: 205 }],
    ] as const;
    const firsts = columns.map(([cause, column]) => {
      const run: RunPart = {
        mode: 'cooling',
        outdoorAirF: 85,
        returnAirF: 75,
        returnWetBulbF: 63,
        suctionPsig: 70,
        dischargePsig: 210,
        suctionLineF: 41 + column.superheat,
        liquidLineF: 104.7 - column.subcooling,
      };
      const unit = {
        refrigerant: 'R-22',
        metering: 'txv',
        nameplateSubcoolingFd: normal.subcooling,
      } as const;
      const order = found(run, unit).causes.map((c) => c.cause);
      return [cause, order.slice(0, 3).includes(cause)];
    });
    expect(firsts).toEqual(columns.map(([cause]) => [cause, true]));
  });
});
