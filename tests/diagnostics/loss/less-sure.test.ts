import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import instruments from '@/lib/diagnostics/data/instruments.json';
import { deriveRun } from '@/lib/diagnostics/derived/derive-run';
import { agePrior } from '@/lib/diagnostics/loss/age-prior';
import { lossOfRun } from '@/lib/diagnostics/loss/loss-of-run';
import { isUsable, runEvidence } from '@/lib/diagnostics/loss/run-evidence';
import { airConflicts } from '@/lib/diagnostics/plausibility/air-conflicts';
import { refrigerantConflicts } from '@/lib/diagnostics/plausibility/refrigerant-conflicts';
import { contextOf, type RunPart, visitOf } from '../support/visit-of';

const asShipped = structuredClone(instruments.kinds);
type Kind = keyof typeof asShipped;

/** Every instrument that much less sure than it is. */
function scaleInstruments(factor: number): void {
  for (const kind of Object.keys(asShipped) as Kind[]) {
    instruments.kinds[kind].absolute = factor * asShipped[kind].absolute;
    instruments.kinds[kind].relativeFrac = factor * asShipped[kind].relativeFrac;
  }
}

afterEach(() => scaleInstruments(1));

const unit = {
  ratings: { seerBtuPerWh: 14, cooling95Btuh: 36_000, hspfBtuPerWh: 8.2, heating47Btuh: 35_000 },
};

/** What was measured on a run, as a loss, with every instrument `factor` times as unsure. */
function measuredLoss(run: RunPart, factor: number) {
  scaleInstruments(factor);
  const context = contextOf(visitOf([run], unit));
  const derived = deriveRun(context);
  const flags = [...refrigerantConflicts(context, derived), ...airConflicts(context, derived)];
  const evidence = runEvidence(context, derived, flags);
  const loss = lossOfRun(run.mode, isUsable(evidence) ? evidence : undefined, agePrior(context.visit));
  return {
    sdCapacity: loss.lnCapacity.sd,
    sdPower: loss.lnPower.sd,
    disagree: loss.notes.some(({ code }) => code === 'capacityRoutesDisagree'),
    void: evidence.balanceVoid?.because,
    balance: evidence.capacity.some(({ id }) => id === 'heatBalance'),
  };
}

const anyRun: fc.Arbitrary<RunPart> = fc
  .record({
    cooling: fc.boolean(),
    air: fc.double({ min: 0, max: 1, noNaN: true }),
    suctionPsig: fc.double({ min: 60, max: 170, noNaN: true }),
    dischargePsig: fc.double({ min: 220, max: 480, noNaN: true }),
    superheatFd: fc.double({ min: 2, max: 40, noNaN: true }),
    subcoolingFd: fc.double({ min: -1, max: 25, noNaN: true }),
    dischargeSuperheatFd: fc.double({ min: 40, max: 140, noNaN: true }),
    outdoorUnitW: fc.double({ min: 1_500, max: 4_500, noNaN: true }),
    outdoorUnitA: fc.option(fc.double({ min: 6, max: 20, noNaN: true }), { nil: undefined }),
    airflowCfm: fc.option(fc.double({ min: 700, max: 1_500, noNaN: true }), { nil: undefined }),
    differenceFd: fc.double({ min: 8, max: 30, noNaN: true }),
  })
  .map((r): RunPart => {
    const returnAirF = r.cooling ? 76 : 70;
    const roughlyCondensingF = 30 + 0.219 * r.dischargePsig;
    const roughlyEvaporatingF = 8 + 0.29 * r.suctionPsig;
    const outdoorAirF = r.cooling ? roughlyCondensingF - 30 * r.air : roughlyEvaporatingF + 25 * r.air - 3;
    return {
      mode: r.cooling ? 'cooling' : 'heating',
      outdoorAirF,
      returnAirF,
      suctionPsig: r.suctionPsig,
      dischargePsig: r.dischargePsig,
      suctionLineF: roughlyEvaporatingF + r.superheatFd,
      liquidLineF: roughlyCondensingF - r.subcoolingFd,
      dischargeLineF: roughlyCondensingF + r.dischargeSuperheatFd,
      outdoorUnitW: r.outdoorUnitW,
      lineV: 240,
      supplyAirF: returnAirF + (r.cooling ? -r.differenceFd : r.differenceFd),
      ...(r.cooling ? { returnWetBulbF: 63, supplyWetBulbF: 61 - 0.5 * r.differenceFd } : {}),
      ...(r.outdoorUnitA === undefined ? {} : { outdoorUnitA: r.outdoorUnitA }),
      ...(r.airflowCfm === undefined ? {} : { airflowCfm: r.airflowCfm }),
    };
  });

const tooEfficient: RunPart = {
  mode: 'cooling',
  outdoorAirF: 92,
  returnAirF: 76,
  returnWetBulbF: 63,
  suctionPsig: 130,
  dischargePsig: 365,
  suctionLineF: 55,
  liquidLineF: 100,
  outdoorUnitW: 2_600,
};

describe('less sure instruments', () => {
  // Routes that disagree are widened by their distance; less sure, they agree, and the distance says nothing any more.
  it('property: never narrow the loss that was measured, unless routes disagreed before', () => {
    const seen = { void: 0, balance: 0 };
    fc.assert(
      fc.property(anyRun, fc.double({ min: 1, max: 4, noNaN: true }), (run, factor) => {
        const sure = measuredLoss(run, 1);
        const unsure = measuredLoss(run, factor);
        seen.void += sure.void === undefined ? 0 : 1;
        seen.balance += sure.balance ? 1 : 0;
        fc.pre(!sure.disagree);
        expect(unsure.sdPower).toBeGreaterThanOrEqual(sure.sdPower - 1e-9);
        expect(unsure.sdCapacity).toBeGreaterThanOrEqual(sure.sdCapacity - 1e-9);
      }),
      { seed: 47, numRuns: 600, maxSkipsPerRun: 20 },
    );
    expect(Math.min(seen.void, seen.balance)).toBeGreaterThan(100);
  });

  it('property: a balance void for too high an efficiency stays void', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 147.4, max: 155, noNaN: true }),
        fc.double({ min: 1, max: 6, noNaN: true }),
        (dischargeLineF, factor) => {
          const run = { ...tooEfficient, suctionLineF: 58, dischargeLineF };
          const [sure, unsure] = [measuredLoss(run, 1), measuredLoss(run, factor)];
          expect([sure.balance, unsure.balance]).not.toEqual([false, true]);
        },
      ),
      { seed: 48, numRuns: 100 },
    );
  });

  it('identity: void from 91 %, whatever the instruments; below it is widened', () => {
    const at = (dischargeLineF: number, factor: number) =>
      measuredLoss({ ...tooEfficient, dischargeLineF }, factor);
    expect([at(148.8, 1).void, at(148.8, 0.1).void, at(153, 0.1).void]).toEqual([
      'efficiencyTooHigh',
      'efficiencyTooHigh',
      undefined,
    ]);
    expect(at(153, 0.1).balance).toBe(true);
  });
});
