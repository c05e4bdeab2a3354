import type { RefrigerantName } from '../../lib/visit/refrigerant-names';
import type { Mode } from '../../lib/visit/run';

/** A unit to be simulated, described as its plate would. */
export type UnitSpec = {
  readonly kind: 'heatPump' | 'airConditioner';
  readonly refrigerant: RefrigerantName;
  readonly metering: 'fixedOrifice' | 'txv';
  readonly nominalTons: number;
  /** Cooling class: sets condensing over ambient, evaporating temperature, outdoor airflow and rated EER. */
  readonly seer: number;
  readonly compressor: 'scroll' | 'reciprocating';
  readonly blower: 'psc' | 'ecm';
  readonly cooling95Btuh?: number;
  readonly eerBtuPerWh?: number;
  readonly nameplateSubcoolingFd?: number;
  readonly airflowCfmPerTon?: number;
  readonly externalStaticInWc?: number;
  readonly ratedV?: number;
  readonly compressorCapUf?: number;
  readonly electricHeatKw?: number;
};

/** Where and how the readings are taken. */
export type Conditions = {
  readonly mode: Mode;
  readonly outdoorF: number;
  readonly returnF: number;
  /** Cooling; left out in heating. */
  readonly returnWetBulbF?: number;
  readonly outdoorHumidityFrac?: number;
  readonly altitudeFt?: number;
  readonly lineV?: number;
  readonly electricHeatOn?: boolean;
};

/** A fault and its size. `level` is 0 for none; its meaning stands beside each. */
export type ImposedFault = {
  readonly fault: /** missing share of the right charge */
    | 'lowCharge'
    /** extra share of the right charge */
    | 'overcharge'
    /** pressure drop in line or drier over the healthy difference of high and low side, at the healthy flow */
    | 'liquidLineRestriction'
    /** share of the orifice or of the open valve that is blocked; negative = too large, or bypassed by a check valve */
    | 'meteringRestriction'
    /** missing share of the indoor airflow: dirty filter, closed registers, dirty coil (fouls it too), weak blower */
    | 'dirtyFilter'
    | 'closedRegisters'
    | 'dirtyIndoorCoil'
    | 'weakBlower'
    /** missing share of the outdoor airflow, with the same share of the coil's surface covered */
    | 'outdoorCoilFouled'
    /** pressure of the air in the condenser over the healthy condensing pressure */
    | 'nonCondensables'
    /** share of the pumped gas that leaks back through the valves */
    | 'compressorValvesLeaking'
    /** share of the pumped gas that crosses the reversing valve */
    | 'reversingValveLeaking'
    /** missing share of the compressor's run capacitance */
    | 'runCapacitorWeak'
    /** share of the electric heat that does not come on */
    | 'supplementaryHeatFault';
  readonly level: number;
};
