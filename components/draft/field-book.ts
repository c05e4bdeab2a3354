/** What the form knows about one field; made on the server from the schema, so that the browser needs no schema. */
export type FieldEntry = {
  readonly label: string;
  /** Unit beside the box ("psig", "°F", "%"); empty for plain numbers. */
  readonly unit: string;
  /** Sign before the box ("$"). */
  readonly sign: string;
  /** Limits in the unit of the form. */
  readonly min?: number;
  readonly max?: number;
  /** One unit of the form in units of the visit (0.01 for percent). */
  readonly perFormUnit: number;
  readonly whole: boolean;
  readonly options?: readonly string[];
};

/** Fields by path pattern ("runs.*.suctionPsig"). */
export type FieldBook = Readonly<Record<string, FieldEntry>>;

/** The unit a number of this field may be typed with. */
export function typedUnit(entry: Pick<FieldEntry, 'sign' | 'unit'>): string {
  return entry.unit === '' ? entry.sign : entry.unit;
}

/** Text of a stored number as the form shows it: 0.45 of humidity is "45". */
export function shownNumber(value: number, entry: Pick<FieldEntry, 'perFormUnit'>): string {
  return String(Number((value / entry.perFormUnit).toPrecision(12)));
}
