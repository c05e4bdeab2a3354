import { z } from 'zod';
import { quantity, text, wholeQuantity } from './quantity';

export const Mode = z.enum(['cooling', 'heating']).meta({ label: 'Mode' });
export type Mode = z.infer<typeof Mode>;

/** Readings taken together, steady, in one mode. Every reading may be missing: missing is left out, never 0. */
export const Run = z.strictObject({
  id: text('Run', 40),
  mode: Mode,
  label: text('Label of the run', 80).optional(),
  runningMinutes: quantity('Minutes running before the readings', 'min', 0, 600).optional(),
  electricHeatOn: z.boolean().meta({ label: 'Electric heat was on' }).optional(),

  suctionPsig: quantity('Suction pressure', 'psig', 0, 300).optional(),
  dischargePsig: quantity('Discharge pressure', 'psig', 0, 700).optional(),
  liquidPsig: quantity('Liquid-line pressure', 'psig', 0, 700).optional(),

  suctionLineF: quantity('Suction line temperature', 'F', -40, 130).optional(),
  dischargeLineF: quantity('Discharge line temperature', 'F', 40, 350).optional(),
  liquidLineF: quantity('Liquid line temperature', 'F', -20, 180).optional(),
  liquidBeforeMeteringF: quantity(
    'Liquid temperature just before the metering device',
    'F',
    -40,
    180,
  ).optional(),
  suctionBeforeValveF: quantity('Suction line before the reversing valve', 'F', -40, 130).optional(),
  statedSuperheatFd: quantity('Superheat as shown by the gauge', 'Fd', -20, 120).optional(),
  statedSubcoolingFd: quantity('Subcooling as shown by the gauge', 'Fd', -20, 80).optional(),
  standingPsig: quantity('Standing pressure, compressor off', 'psig', 0, 500).optional(),
  standingCoilAirF: quantity('Air at the outdoor coil during the standing test', 'F', -20, 130).optional(),

  outdoorAirF: quantity('Outdoor air', 'F', -40, 130).optional(),
  returnAirF: quantity('Return air', 'F', 40, 110).optional(),
  returnWetBulbF: quantity('Return wet bulb', 'F', 30, 90).optional(),
  returnHumidityFrac: quantity('Return relative humidity', 'frac', 0.05, 1).optional(),
  supplyAirF: quantity('Supply air', 'F', 30, 160).optional(),
  supplyWetBulbF: quantity('Supply wet bulb', 'F', 28, 100).optional(),

  lineV: quantity('Voltage at the outdoor unit', 'V', 90, 520).optional(),
  compressorA: quantity('Compressor amps', 'A', 0.5, 80).optional(),
  outdoorUnitA: quantity('Outdoor unit amps (compressor and fan)', 'A', 0.5, 90).optional(),
  outdoorFanA: quantity('Outdoor fan amps', 'A', 0.1, 10).optional(),
  powerFactorFrac: quantity('Power factor', 'frac', 0.4, 1).optional(),
  outdoorUnitW: quantity('Outdoor unit watts (compressor and fan)', 'W', 100, 15_000).optional(),
  blowerA: quantity('Blower amps', 'A', 0.1, 20).optional(),
  blowerW: quantity('Blower watts', 'W', 20, 2_500).optional(),

  airflowCfm: quantity('Airflow measured directly', 'cfm', 100, 4_000).optional(),
  grilleAreaIn2: quantity('Return grille gross area', 'in2', 20, 3_000).optional(),
  grilleWidthIn: quantity('Return grille width', 'in', 4, 80).optional(),
  grilleHeightIn: quantity('Return grille height', 'in', 4, 60).optional(),
  grilleFreeAreaFrac: quantity('Free-area factor of the grille', 'frac', 0.3, 1).optional(),
  grilleFaceFpm: quantity('Mean face velocity at the grille', 'fpm', 20, 2_000).optional(),
  grilleFacePointsFpm: z
    .array(quantity('Face velocity at one point of the grille', 'fpm', 0, 2_000))
    .max(60)
    .optional(),
  heatRiseReturnF: quantity('Electric-heat test: return air', 'F', 40, 110).optional(),
  heatRiseSupplyF: quantity('Electric-heat test: supply air', 'F', 50, 200).optional(),
  heatRiseV: quantity('Electric-heat test: volts', 'V', 90, 520).optional(),
  heatRiseA: quantity('Electric-heat test: amps', 'A', 1, 200).optional(),

  returnStaticInWc: quantity('Return static (before the blower)', 'in. w.c.', -3, 0).optional(),
  supplyStaticInWc: quantity('Supply static (after the unit)', 'in. w.c.', 0, 3).optional(),
  filterDropInWc: quantity('Filter pressure drop', 'in. w.c.', 0, 2).optional(),
  coilDropInWc: quantity('Indoor coil pressure drop', 'in. w.c.', 0, 2).optional(),

  compressorCapRatedUf: quantity('Compressor run capacitor, label', 'uF', 1, 120).optional(),
  compressorCapUf: quantity('Compressor run capacitor, measured', 'uF', 0, 150).optional(),
  fanCapRatedUf: quantity('Fan run capacitor, label', 'uF', 1, 60).optional(),
  fanCapUf: quantity('Fan run capacitor, measured', 'uF', 0, 80).optional(),

  stripKw: quantity('Electric heat energised', 'kW', 1, 40).optional(),
  stripElementCount: wholeQuantity('Heating elements energised', 'count', 1, 8).optional(),
  stripA: quantity('Electric heat amps', 'A', 0, 200).optional(),
  stripV: quantity('Electric heat volts', 'V', 90, 520).optional(),

  note: text('Note on the run', 4_000).optional(),
});
export type Run = z.infer<typeof Run>;

/** Name of a numeric reading of a run. */
export type ReadingName = { [K in keyof Run]-?: NonNullable<Run[K]> extends number ? K : never }[keyof Run];
