import { describe, expect, it } from 'vitest';
import {
  directionShares,
  featureIds,
  featureSize,
  severityShare,
  severityWords,
} from '@/lib/diagnostics/causes/feature';
import { allPatterns, featuresOf, patternsOf, shiftBy } from '@/lib/diagnostics/causes/pattern';
import { CauseId } from '@/lib/visit/cause';
import '../support/matchers';
import { CHART_FEATURES, publishedPatterns, withoutCause } from './published-patterns';

const PRINTED: Readonly<Record<string, string>> = {
  low: 'low',
  high: 'high',
  normal: 'normal',
  'normal or high': 'normalOrHigh',
  'normal or low': 'normalOrLow',
  varies: 'varies',
};

/** Where the table is more careful than the chart it comes from, with the reason. */
const MORE_CAREFUL: Readonly<Record<string, string>> = {
  'lowIndoorAirflow cooling fixedOrifice subcooling': 'another chart has it fall',
  'outdoorCoilFouled cooling fixedOrifice subcooling': 'low in one chart, normal in laboratory reports',
  'outdoorCoilFouled cooling fixedOrifice airDifference': 'the same note has it low when severe',
  'liquidLineRestriction cooling fixedOrifice subcooling': 'normal to high with factory charge',
  'liquidLineRestriction cooling txv subcooling': 'normal to high with factory charge',
  'liquidLineRestriction heating fixedOrifice subcooling': 'normal to high with factory charge',
  'liquidLineRestriction heating txv subcooling': 'normal to high with factory charge',
  'meteringRestriction cooling fixedOrifice subcooling': 'normal to high with factory charge',
  'meteringRestriction cooling txv subcooling': 'normal to high with factory charge',
  'meteringRestriction heating fixedOrifice subcooling': 'normal to high with factory charge',
  'meteringRestriction heating txv subcooling': 'normal to high with factory charge',
  'meteringRestriction cooling fixedOrifice condensing': 'higher in two charts, normal to low in two texts',
  'meteringRestriction heating fixedOrifice condensing': 'higher in two charts, normal to low in two texts',
  'compressorValvesLeaking cooling fixedOrifice discharge': 'wet suction cools it; recalled, not read',
  'compressorValvesLeaking cooling txv discharge': 'wet suction cools it; recalled, not read',
  'compressorValvesLeaking heating fixedOrifice discharge': 'wet suction cools it; recalled, not read',
  'compressorValvesLeaking heating txv discharge': 'wet suction cools it; recalled, not read',
  'compressorValvesLeaking heating txv superheat': 'low in one chart, high in another',
  'compressorValvesLeaking heating txv subcooling': 'high in two charts, normal or low in other texts',
  'reversingValveLeaking cooling txv superheat': 'the valve holds the coil, gas is heated again on its way',
  'reversingValveLeaking heating txv superheat': 'the valve holds the coil, gas is heated again on its way',
  'nonCondensables cooling fixedOrifice subcooling': 'sources contradict each other: a variant for each',
  'nonCondensables cooling txv subcooling': 'sources contradict each other: a variant for each',
  'nonCondensables heating fixedOrifice subcooling': 'sources contradict each other: a variant for each',
  'nonCondensables heating txv subcooling': 'sources contradict each other: a variant for each',
  'lowCharge heating txv evaporating':
    'one table of a variable-speed unit; a valve with travel left holds it',
  'overcharge heating txv evaporating': 'one table of a variable-speed unit; normal in other texts',
  'lowIndoorAirflow heating txv evaporating': 'one table of a variable-speed unit',
  'lowIndoorAirflow heating txv superheat': 'one table of a variable-speed unit',
  'lowIndoorAirflow heating txv subcooling': 'one table has it low, other texts normal to high',
  'lowIndoorAirflow heating fixedOrifice evaporating': 'row of the weak blower: as low indoor airflow',
  'lowIndoorAirflow heating fixedOrifice superheat': 'row of the weak blower: as low indoor airflow',
  'lowIndoorAirflow cooling fixedOrifice superheat': 'row of the weak blower: as low indoor airflow',
  'lowIndoorAirflow cooling fixedOrifice discharge': 'row of the weak blower: as low indoor airflow',
  'lowIndoorAirflow cooling txv superheat': 'row of the weak blower: as low indoor airflow',
  'lowIndoorAirflow cooling txv discharge': 'row of the weak blower: as low indoor airflow',
  'outdoorCoilFouled heating txv superheat': 'one table of a variable-speed unit; a valve holds superheat',
  'outdoorCoilFouled heating txv subcooling': 'one table of a variable-speed unit',
  'runCapacitorWeak cooling fixedOrifice evaporating': 'row of the fan: as dirty outdoor coil',
  'runCapacitorWeak cooling txv evaporating': 'row of the fan: as dirty outdoor coil',
  'runCapacitorWeak cooling fixedOrifice superheat': 'row of the fan: as dirty outdoor coil',
  'runCapacitorWeak cooling txv superheat': 'row of the fan: as dirty outdoor coil',
  'runCapacitorWeak cooling fixedOrifice subcooling': 'row of the fan: as dirty outdoor coil',
  'runCapacitorWeak cooling txv subcooling': 'row of the fan: as dirty outdoor coil',
  'runCapacitorWeak cooling fixedOrifice power': 'row of the fan: as dirty outdoor coil',
  'supplementaryHeatFault heating fixedOrifice airDifference':
    'short only while electric heat is on, when the rise is not judged',
  'supplementaryHeatFault heating txv airDifference':
    'short only while electric heat is on, when the rise is not judged',
};

const causes = CauseId.options.filter((cause) => cause !== 'none');

describe('pattern table', () => {
  it('wiring: every cause has a pattern for each mode and metering device, with source and status', () => {
    const lacking = causes.flatMap((cause) =>
      (['cooling', 'heating'] as const).flatMap((mode) =>
        (['fixedOrifice', 'txv'] as const).filter(
          (metering) => patternsOf(cause, mode, metering).length === 0,
        ),
      ),
    );
    expect(lacking).toEqual([]);
    expect(allPatterns).toHaveLength(52);
    const rows = allPatterns as readonly (Record<string, unknown> & { directions: object })[];
    expect(rows.filter((row) => !row.source || !row.status)).toEqual([]);
    const features = rows.flatMap((row) => Object.keys(row.directions));
    expect(features.filter((name) => !(featureIds as readonly string[]).includes(name))).toEqual([]);
  });

  // Trade charts and makers' tables, 50 rows counting "any metering" twice; statuses stand in the reference file.
  it('outside: directions are those of the published charts, or more careful for a listed reason', () => {
    const used = new Set<string>();
    const unexplained = publishedPatterns.flatMap((published) => {
      const variants = patternsOf(published.cause, published.mode, published.metering);
      const pattern = published.name.includes('outdoor fan') ? variants.at(-1) : variants[0];
      return Object.entries(CHART_FEATURES).flatMap(([word, feature]) => {
        const printed = published.words[word as keyof typeof CHART_FEATURES];
        const ours = pattern?.directions[feature] ?? 'normal';
        if (PRINTED[printed] === ours) return [];
        const key = `${published.cause} ${published.mode} ${published.metering} ${feature}`;
        used.add(key);
        return key in MORE_CAREFUL ? [] : [`${key}: printed ${printed}, ours ${ours} (${published.name})`];
      });
    });
    expect(publishedPatterns).toHaveLength(50);
    expect(unexplained).toEqual([]);
    expect(Object.keys(MORE_CAREFUL).filter((key) => !used.has(key))).toEqual([]);
    expect(withoutCause).toEqual([
      'orifice too large, not seated, or check valve leaking (cooling)',
      'low indoor temperature (not a fault) (heating)',
      'orifice too large or check valve leaking (heating)',
    ]);
  });

  it('identity: a shift is direction x size x severity; what is not listed stays put', () => {
    const [pattern] = patternsOf('overcharge', 'cooling', 'txv');
    if (pattern === undefined) throw new Error('no pattern');
    // high subcooling: 7 F x 1.2
    expect(shiftBy(pattern, 'moderate', 'subcooling').mean).toBeCloseToWithin(8.4, 1e-9);
    expect(shiftBy(pattern, 'severe', 'subcooling').mean).toBeCloseToWithin(16.8, 1e-9);
    expect(shiftBy(pattern, 'mild', 'subcooling').mean).toBeCloseToWithin(4.2, 1e-9);
    expect(shiftBy(pattern, 'severe', 'stripAmps')).toEqual({ mean: 0, spread: 0 });
    expect(featuresOf(pattern)).toContain('subcooling');
    expect(featuresOf(pattern)).not.toContain('stripAmps');
    expect(patternsOf('none', 'cooling', 'txv')).toEqual([]);
  });

  it('identity: severities rise, their chances add up to 1; "varies" is wide, "normal" narrow', () => {
    const factors = severityWords.map((word) => severityShare(word).factor);
    expect(factors).toEqual([...factors].sort((a, b) => a - b));
    expect(severityWords.reduce((sum, word) => sum + severityShare(word).priorFrac, 0)).toBeCloseToWithin(
      1,
      1e-12,
    );
    expect(directionShares('varies').spread).toBeGreaterThan(directionShares('high').spread);
    expect(directionShares('normal').spread).toBeLessThan(directionShares('high').spread);
    expect(featureSize('superheat', 1)).toBeGreaterThan(featureSize('superheat', -1));
  });

  it('identity: a capacitor has two patterns, of the compressor and of the outdoor fan', () => {
    const variants = patternsOf('runCapacitorWeak', 'cooling', 'txv').map((pattern) => pattern.variant);
    expect(variants).toEqual(['compressor', 'outdoorFan']);
  });
});
