import { z } from 'zod';
import { quantity, text, wholeQuantity } from './quantity';
import { RefrigerantName } from './refrigerant-names';

export const UnitKind = z.enum(['heatPump', 'airConditioner']).meta({ label: 'Kind of unit' });
export type UnitKind = z.infer<typeof UnitKind>;

export const MeteringDevice = z.enum(['fixedOrifice', 'txv']).meta({ label: 'Metering device' });
export type MeteringDevice = z.infer<typeof MeteringDevice>;

export const BlowerKind = z.enum(['psc', 'ecm']).meta({ label: 'Blower motor' });
export type BlowerKind = z.infer<typeof BlowerKind>;

/** Between which pressure ports the indoor coil lies: before the blower, after it, or between neither pair. */
export const CoilCountedIn = z
  .enum(['returnStatic', 'supplyStatic', 'neither'])
  .meta({ label: 'Where the indoor coil lies between the pressure ports' });
export type CoilCountedIn = z.infer<typeof CoilCountedIn>;

/** Ratings from the plate or the makers' papers; a key left out means unknown. Old and new procedures are never mixed. */
export const Ratings = z.strictObject({
  seerBtuPerWh: quantity('SEER', 'Btu/Wh', 5, 30).optional(),
  eerBtuPerWh: quantity('EER', 'Btu/Wh', 4, 20).optional(),
  hspfBtuPerWh: quantity('HSPF', 'Btu/Wh', 4, 16).optional(),
  seer2BtuPerWh: quantity('SEER2', 'Btu/Wh', 5, 30).optional(),
  eer2BtuPerWh: quantity('EER2', 'Btu/Wh', 4, 20).optional(),
  hspf2BtuPerWh: quantity('HSPF2', 'Btu/Wh', 4, 14).optional(),
  cooling95Btuh: quantity('Cooling capacity at 95 °F', 'Btu/h', 6_000, 80_000).optional(),
  heating47Btuh: quantity('Heating capacity at 47 °F', 'Btu/h', 6_000, 80_000).optional(),
  heating17Btuh: quantity('Heating capacity at 17 °F', 'Btu/h', 3_000, 60_000).optional(),
});
export type Ratings = z.infer<typeof Ratings>;

/**
 * The unit's own charging table as typed from its plate: outdoor temperature down, indoor temperature across
 * (wet bulb in cooling, dry bulb in heating), healthy pressures in the cells.
 */
export const ChargingTable = z
  .strictObject({
    mode: z.enum(['cooling', 'heating']).meta({ label: 'Mode of the charging table' }),
    outdoorF: z
      .array(quantity('Charging table: outdoor temperature', 'F', -30, 125))
      .min(2)
      .max(12),
    indoorF: z
      .array(quantity('Charging table: indoor temperature', 'F', 40, 95))
      .min(1)
      .max(12),
    suctionPsig: z.array(z.array(quantity('Charging table: suction pressure', 'psig', 0, 300))).optional(),
    dischargePsig: z
      .array(z.array(quantity('Charging table: discharge pressure', 'psig', 0, 700)))
      .optional(),
  })
  .refine((t) => rising(t.outdoorF) && rising(t.indoorF), {
    params: { limit: 'in rising order of temperature' },
  })
  .refine((t) => fits(t.suctionPsig, t.outdoorF, t.indoorF) && fits(t.dischargePsig, t.outdoorF, t.indoorF), {
    params: { limit: 'one row for each outdoor and one column for each indoor temperature' },
  })
  .meta({ label: 'Charging table' });
export type ChargingTable = z.infer<typeof ChargingTable>;

function rising(values: readonly number[]): boolean {
  return values.every((v, i) => i === 0 || v > (values[i - 1] ?? v));
}

function fits(
  cells: readonly (readonly number[])[] | undefined,
  rows: readonly number[],
  columns: readonly number[],
): boolean {
  return (
    cells === undefined ||
    (cells.length === rows.length && cells.every((row) => row.length === columns.length))
  );
}

/** The equipment. Only its kind and nominal size are indispensable; what is left out is assumed and said so. */
export const Unit = z.strictObject({
  kind: UnitKind,
  nominalTons: quantity('Nominal size', 'ton', 0.75, 6),
  refrigerant: RefrigerantName.optional(),
  /** One outside the list, by the name on the plate; its pressures stay pressures. */
  otherRefrigerant: text('Another refrigerant, as on the nameplate', 40).optional(),
  metering: MeteringDevice.optional(),
  manufactureYear: wholeQuantity('Year of manufacture', 'year', 1970, 2100).optional(),
  ratings: Ratings.optional(),
  nameplateSubcoolingFd: quantity('Subcooling on the nameplate', 'Fd', 2, 25).optional(),
  ratedLoadA: quantity('Compressor rated load amps (RLA)', 'A', 2, 60).optional(),
  ratedV: quantity('Nameplate voltage', 'V', 100, 480).optional(),
  electricHeatKw: quantity('Electric heat installed', 'kW', 0, 40).optional(),
  /** Stages of the electric heat, where outdoor thermostats or staging are known. */
  electricHeatStages: z
    .array(
      z.strictObject({
        sizeKw: quantity('Size of the stage of electric heat', 'kW', 0.5, 40),
        lockOutAboveF: quantity('Stage locked out above', 'F', -30, 75).optional(),
      }),
    )
    .min(1)
    .max(6)
    .meta({ label: 'Stages of electric heat' })
    .optional(),
  cutOutF: quantity('Compressor rests below', 'F', -40, 50).optional(),
  blower: BlowerKind.optional(),
  ratedStaticInWc: quantity('Highest external static on the nameplate', 'in. w.c.', 0.1, 2).optional(),
  coilCountedIn: CoilCountedIn.optional(),
  chargingTables: z.array(ChargingTable).max(2).optional(),
  note: text('Note on the unit', 2_000).optional(),
});
export type Unit = z.infer<typeof Unit>;
