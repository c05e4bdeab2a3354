/** One row per visit: which revision is its latest. */
export type VisitTable = { id: string; head_revision: number };

/** One row per save. Nothing here is ever changed or removed. */
export type RevisionTable = {
  visit_id: string;
  /** 1, 2, 3 ... without gaps inside a visit. */
  revision: number;
  /** The draft as JSON text, as typed. */
  draft: string;
  /** Title fields as JSON text, so that a list need not read every draft. */
  title: string;
  /** ISO 8601 instant, UTC. */
  saved_at: string;
  saved_by: string;
  /** 1 when this revision took the visit off the list. */
  deleted: number;
};

/** What the store remembers about itself. */
export type SettingTable = { key: string; value: string };

/** What the newest revision of a visit came to; it can always be made again. */
export type DigestTable = {
  visit_id: string;
  revision: number;
  /** Version of what made it. */
  maker: string;
  /** JSON text. */
  digest: string;
};

/** One row per state of a part of the shop's own settings. Nothing here is ever changed or removed. */
export type ShopTable = {
  part: string;
  /** 1, 2, 3 ... without gaps inside a part. */
  revision: number;
  /** JSON text. */
  data: string;
  /** ISO 8601 instant, UTC. */
  saved_at: string;
  saved_by: string;
};

export type Tables = {
  visits: VisitTable;
  revisions: RevisionTable;
  settings: SettingTable;
  digests: DigestTable;
  shop: ShopTable;
};
