/**
 * What the user can fix, as data; worded by `lib/visit/wording`.
 * `path` is the key path inside the visit, joined by dots ("runs.0.suctionPsig").
 */
export type IssueCode =
  | 'missing'
  | 'outOfRange'
  | 'conflict'
  | 'notNumber'
  | 'notAllowed'
  | 'unknownField'
  | 'wrongVersion'
  | 'notReadable';

export type Issue = {
  readonly code: IssueCode;
  readonly path: string;
  /** Plain-language name of the field ("Suction pressure"). */
  readonly label: string;
  /** What was typed, as text, kept so that nothing is lost. */
  readonly value?: string;
  /** The limit broken, in words with its unit ("between 0 and 600 psig"). */
  readonly limit?: string;
  /** What to do about it, a whole sentence. */
  readonly fix: string;
};

/** Expected failures are values: either the answer or every issue at once. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly issues: readonly Issue[] };
