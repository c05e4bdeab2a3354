import type { CompanyLook, LabelledText } from './sheet';

/** A table of a plain document; every cell is a finished text. */
export type PlainTable = {
  /** What the table is, for those who hear it read. */
  readonly caption: string;
  readonly columns: readonly {
    readonly label: string;
    readonly align: 'left' | 'right';
    /** Share of the width; all shares make 1. */
    readonly share: number;
  }[];
  readonly rows: readonly { readonly cells: readonly string[]; readonly strong?: boolean }[];
};

export type PlainSection = {
  /** For addresses and tests; not read by anyone. */
  readonly id: string;
  readonly title: string;
  /** What decides is set larger than evidence. */
  readonly weight: 'decides' | 'evidence';
  /** Told before everything else of the section, as a warning. */
  readonly warnings?: readonly string[];
  readonly sentences?: readonly string[];
  /** Names and values, as a list. */
  readonly facts?: readonly LabelledText[];
  readonly tables?: readonly PlainTable[];
};

/** A document of sections that flows over as many pages as it needs, as data: PDF, page and text say the same. */
export type PlainDocument = {
  readonly languageTag: string;
  readonly documentTitle: string;
  readonly subject: string;
  readonly author: string;
  /** ISO date of the visit; the document carries no other date. */
  readonly visitDate: string;
  readonly footer: string;
  /** "page {page} of {pages}" with the two numbers still to be filled in. */
  readonly pageOf: string;
  readonly notDrawn: LabelledText;
  readonly look?: CompanyLook;
  readonly heading: string;
  readonly invented?: string;
  readonly facts: readonly LabelledText[];
  readonly sections: readonly PlainSection[];
};
