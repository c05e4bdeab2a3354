/** What is recommended, as far as a list tells it apart. */
export const ADVICE = [
  'unsafe',
  'leave',
  'repair',
  'repairThenReplace',
  'replace',
  'open',
  'leaveOnly',
  'unfinished',
  'failed',
] as const;
export type Advice = (typeof ADVICE)[number];

/** What a revision came to, in a few words. */
export type VisitDigest = {
  readonly headline: string;
  readonly advice: Advice;
  readonly causes: readonly string[];
};

/** One visit as the list has it; without digest while it is still being worked out. */
export type ListRow = {
  readonly id: string;
  readonly revision: number;
  /** ISO 8601 instant, UTC. */
  readonly savedAt: string;
  readonly customer?: string;
  readonly street?: string;
  readonly town?: string;
  readonly visitDate?: string;
  readonly technician?: string;
  readonly unitKind?: string;
  readonly nominalTons?: string;
  readonly refrigerant?: string;
  readonly note?: string;
  readonly modes?: readonly string[];
  readonly chosen?: { readonly name: string; readonly date: string };
  readonly invented?: true;
  readonly digest?: VisitDigest;
};
