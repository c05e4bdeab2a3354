import type { FeatureId } from '@/lib/diagnostics/causes/feature';
import type { CauseId } from '@/lib/visit/cause';
import type { Mode } from '@/lib/visit/run';
import type { MeteringDevice } from '@/lib/visit/unit';
import reference from '../../reference/fault-patterns.json';

/** The seven features the published charts print. */
export const CHART_FEATURES = {
  suction: 'evaporating',
  head: 'condensing',
  superheat: 'superheat',
  subcooling: 'subcooling',
  discharge_temp: 'discharge',
  amps: 'power',
  air_split: 'airDifference',
} as const satisfies Record<string, FeatureId>;

/** Names of the charts for our causes; a chart row for which there is no cause is left out and counted. */
const CAUSES: Readonly<Record<string, CauseId>> = {
  undercharge: 'lowCharge',
  overcharge: 'overcharge',
  'low indoor airflow': 'lowIndoorAirflow',
  'low indoor airflow or dirty indoor coil': 'lowIndoorAirflow',
  'weak blower (wheel, motor, capacitor, speed)': 'lowIndoorAirflow',
  'weak blower': 'lowIndoorAirflow',
  'outdoor coil dirty or low airflow': 'outdoorCoilFouled',
  'outdoor coil dirty, iced or low airflow': 'outdoorCoilFouled',
  'liquid-line or drier restriction': 'liquidLineRestriction',
  'metering orifice or valve restricted': 'meteringRestriction',
  'orifice too small': 'meteringRestriction',
  'non-condensables': 'nonCondensables',
  'compressor valves leaking': 'compressorValvesLeaking',
  'reversing valve leaking': 'reversingValveLeaking',
  'weak run capacitor, compressor': 'runCapacitorWeak',
  'weak run capacitor, outdoor fan': 'runCapacitorWeak',
  'supplementary heat fault': 'supplementaryHeatFault',
};

export type PublishedPattern = {
  readonly name: string;
  readonly cause: CauseId;
  readonly mode: Mode;
  readonly metering: MeteringDevice;
  /** "low", "normal or high", "varies" ...; a word that points to another row stays as printed. */
  readonly words: Readonly<Record<keyof typeof CHART_FEATURES, string>>;
};

/** Every published pattern that has a cause, once for each metering device it stands for. */
export const publishedPatterns: readonly PublishedPattern[] = reference.patterns.flatMap((row) => {
  const cause = CAUSES[row.cause];
  if (cause === undefined) return [];
  const devices: readonly MeteringDevice[] =
    row.metering === 'any' ? ['fixedOrifice', 'txv'] : [row.metering === 'fixed' ? 'fixedOrifice' : 'txv'];
  return devices.map((metering) => ({
    name: row.cause,
    cause,
    mode: row.mode === 'cooling' ? ('cooling' as const) : ('heating' as const),
    metering,
    words: row,
  }));
});

/** Rows of the charts for which there is no cause to name. */
export const withoutCause: readonly string[] = reference.patterns
  .filter((row) => CAUSES[row.cause] === undefined)
  .map((row) => `${row.cause} (${row.mode})`);
