import type { Flag } from '../findings';
import type { RunContext } from '../run-context';
import type { FeatureId } from './feature';

const COIL_FLOW = [
  'dischargeLineF',
  'liquidLineF',
  'suctionPsig',
  'dischargePsig',
  'supplyAirF',
  'returnAirF',
];

/** Readings a feature rests on; enough to tell whether a conflict touches it. */
const RESTS_ON: Readonly<Record<FeatureId, readonly string[]>> = {
  evaporating: ['suctionPsig'],
  condensing: ['dischargePsig', 'liquidPsig'],
  superheat: ['suctionPsig', 'suctionLineF', 'returnWetBulbF'],
  subcooling: ['liquidLineF', 'dischargePsig', 'liquidPsig'],
  liquidApproach: ['liquidLineF'],
  discharge: ['dischargeLineF'],
  power: ['outdoorUnitW', 'compressorA', 'outdoorUnitA', 'lineV'],
  airDifference: ['supplyAirF', 'returnAirF', 'returnWetBulbF'],
  airflow: ['airflowCfm', 'grilleFaceFpm', 'heatRiseSupplyF'],
  efficiency: ['dischargeLineF', 'suctionLineF', 'suctionPsig', 'dischargePsig'],
  capacityGap: [
    'dischargeLineF',
    'suctionLineF',
    'liquidLineF',
    'suctionPsig',
    'dischargePsig',
    'supplyAirF',
    'returnAirF',
  ],
  coilFlowForPower: COIL_FLOW,
  coilFlowForSize: COIL_FLOW,
  pumpedForSize: ['dischargeLineF', 'suctionLineF', 'suctionPsig', 'dischargePsig'],
  standing: ['standingPsig', 'standingCoilAirF'],
  valveRise: ['suctionLineF', 'suctionBeforeValveF'],
  drierDrop: ['liquidLineF', 'liquidBeforeMeteringF'],
  static: ['returnStaticInWc', 'supplyStaticInWc'],
  compressorCapacitor: ['compressorCapUf'],
  fanCapacitor: ['fanCapUf'],
  stripAmps: ['stripA'],
  powerFactor: ['outdoorUnitW', 'lineV', 'outdoorUnitA'],
};

/** What is known of the circuit by way of saturation, and what is judged against it. */
const BY_SATURATION: ReadonlySet<FeatureId> = new Set([
  'evaporating',
  'condensing',
  'superheat',
  'subcooling',
  'liquidApproach',
  'discharge',
  'efficiency',
  'capacityGap',
  'coilFlowForPower',
  'coilFlowForSize',
  'pumpedForSize',
  'standing',
]);

/** Saturation against air: clamps cannot be to blame, so gauge, thermometer or the refrigerant itself is wrong. */
const REFRIGERANT_IN_DOUBT: ReadonlySet<string> = new Set(['evaporatingAboveAir', 'condensingBelowAir']);

/**
 * Conflicts of a run that take readings out of the causes. Capacities that disagree are evidence of their own, and
 * stay.
 *
 * @param flags  flags of the run
 * Check: tests/diagnostics/causes/conflicting-readings.test.ts
 */
export function countedConflicts(flags: readonly Flag[]): readonly Flag[] {
  return flags.filter(({ severity, code }) => severity === 'conflict' && code !== 'capacitiesDisagree');
}

/**
 * Whether a feature rests on readings that cannot all be true.
 *
 * @param id       feature
 * @param context  run: only a reading that was taken can be in conflict
 * @param flags    flags of the run
 * Check: tests/diagnostics/causes/conflicting-readings.test.ts
 */
export function isInConflict(id: FeatureId, context: RunContext, flags: readonly Flag[]): boolean {
  return countedConflicts(flags).some(
    ({ code, readings }) =>
      (REFRIGERANT_IN_DOUBT.has(code) && BY_SATURATION.has(id)) ||
      readings.some(
        (name) => RESTS_ON[id].includes(name) && context.run[name as 'suctionPsig'] !== undefined,
      ),
  );
}
