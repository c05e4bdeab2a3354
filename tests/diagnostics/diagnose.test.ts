import { describe, expect, it } from 'vitest';
import { diagnose } from '@/lib/diagnostics/diagnose';
import type { Findings } from '@/lib/diagnostics/findings';
import wording from '@/lib/diagnostics/wording/en.json';
import type { Visit } from '@/lib/visit/visit';
import './support/matchers';
import { contextOf, healthyOf, type RunPart, visitOf } from './support/visit-of';

function findings(visit: Visit): Findings {
  const { properties } = contextOf({ ...visit, runs: [{ id: 'x', mode: 'cooling' }] });
  return diagnose({ visit, healthy: healthyOf(visit), properties });
}

const cooling = {
  mode: 'cooling',
  label: 'as found',
  outdoorAirF: 92,
  returnAirF: 76,
  returnWetBulbF: 63,
  suctionPsig: 130,
  dischargePsig: 365,
  suctionLineF: 55,
  dischargeLineF: 215,
  liquidLineF: 118,
  outdoorUnitW: 2_600,
} as const satisfies RunPart;

function withoutRefrigerant(visit: Visit): Visit {
  const { refrigerant: _, ...unit } = visit.unit;
  return { ...visit, unit };
}

describe('diagnose', () => {
  it('identity: dangers come first, then the rest in the order of the runs', () => {
    const visit = visitOf(
      [cooling, { mode: 'heating', lineV: 180 }],
      {},
      { observations: [{ id: 'shortToGround' }] },
    );
    const { flags } = findings(visit);
    const severities = flags.map((flag) => flag.severity);
    const firstOther = severities.findIndex((severity) => severity !== 'danger');
    expect(severities.slice(firstOther)).not.toContain('danger');
    expect(flags.slice(0, 3).map((flag) => flag.code)).toEqual([
      'seen.shortToGround',
      'dischargeLineNearLimit',
      'voltageOutsideDualRating',
    ]);
  });

  it('identity: a conflicting reading stays in the findings, the flag names it', () => {
    const found = findings(visitOf([cooling]));
    expect(found.flags.map((flag) => flag.code)).toContain('liquidWarmerThanCondensing');
    const run = found.runs[0];
    expect(run?.derived.find((value) => value.id === 'liquidSubcoolingFd')?.value).toBeLessThan(-5);
    expect(run?.targets.find((target) => target.id === 'dischargeLineF')?.reading).toBe(215);
    expect(found.loss.cooling?.notes.map((note) => note.code)).toContain('heatBalanceVoid');
  });

  it("identity: the technician's suspicion is said to be the technician's", () => {
    const visit = visitOf([], {}, { suspectedCause: { cause: 'lowCharge', note: 'oil at a flare' } });
    expect(findings(visit).suspectedCause).toEqual({
      cause: 'lowCharge',
      saidBy: 'technician',
      note: 'oil at a flare',
    });
    expect(findings(visitOf([]))).not.toHaveProperty('suspectedCause');
  });

  it('identity: an unknown refrigerant is said once, and everything else still answers', () => {
    const run = { ...cooling, airflowCfm: 1_100, supplyAirF: 57, lineV: 240 };
    const found = findings(withoutRefrigerant(visitOf([run])));
    expect(found.flags.filter((flag) => flag.code === 'refrigerantUnknown')).toHaveLength(1);
    const ids = found.runs[0]?.derived.map((value) => value.id) ?? [];
    expect(ids).toEqual(
      expect.arrayContaining(['compressionRatio', 'airflowCfm', 'airSplitFd', 'outdoorUnitW']),
    );
    expect(ids).not.toContain('suctionSuperheatFd');
    expect(found.loss.cooling?.routes.map((route) => route.id)).toContain('measuredPower');
  });

  it('identity: an empty visit answers: no runs, loss by age, no exception', () => {
    const found = findings(visitOf([]));
    expect(found.flags.map((flag) => flag.code)).toEqual(['noRuns']);
    expect(found.runs).toEqual([]);
    expect(found.lossByRun).toEqual([]);
    expect(found.loss.cooling?.basis).toBe('assumed');
  });

  it('identity: unknown altitude and metering are said when gauges were read', () => {
    const visit = visitOf([cooling], {}, { site: {} });
    const { metering: _, ...unit } = visit.unit;
    const codes = findings({ ...visit, unit }).flags.map((flag) => flag.code);
    expect(codes).toEqual(expect.arrayContaining(['altitudeUnknown', 'meteringUnknown']));
    const noGauges = findings({ ...visitOf([{ mode: 'cooling', lineV: 240 }], {}, { site: {} }), unit });
    expect(noGauges.flags).toEqual([]);
  });

  it('identity: the same visit gives the same findings, and JSON keeps them', () => {
    const visit = visitOf([cooling, { mode: 'heating', outdoorAirF: 40, compressorA: 9 }]);
    const found = findings(visit);
    expect(findings(visit)).toEqual(found);
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
  });

  it('wiring: every code that comes out has its words', () => {
    const words: Record<string, string> = wording;
    const visits = [
      visitOf([cooling, { ...cooling, liquidLineF: 100, dischargeLineF: 165, runningMinutes: 5 }]),
      visitOf([
        { mode: 'heating', outdoorAirF: -40, returnAirF: 70, outdoorUnitW: 2_000, electricHeatOn: true },
      ]),
      visitOf(
        [
          {
            mode: 'cooling',
            outdoorAirF: 90,
            suctionPsig: 120,
            dischargePsig: 350,
            suctionLineF: 60,
            dischargeLineF: 180,
            compressorA: 11,
          },
        ],
        {},
        { site: {} },
      ),
      visitOf([]),
    ];
    const all = visits.map(findings);
    const codes = all.flatMap((found) => [
      ...found.flags.map((flag) => `flag.${flag.code}`),
      ...found.runs.flatMap((run) => (run.plain ?? []).map((saying) => saying.code)),
      ...[found.loss.cooling, found.loss.heating].flatMap((loss) =>
        loss === undefined
          ? []
          : [
              ...loss.notes.map((note) => `note.${note.code}`),
              ...loss.routes.flatMap((route) =>
                route.note === undefined ? [] : [`note.${route.note.code}`],
              ),
            ],
      ),
      ...found.wouldNarrow.map((saying) => saying.code),
    ]);
    expect(new Set(codes).size).toBeGreaterThan(15);
    expect([...new Set(codes)].filter((code) => words[code] === undefined)).toEqual([]);
  });
});
