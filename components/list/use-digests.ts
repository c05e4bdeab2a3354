'use client';

import { useEffect, useState } from 'react';
import type { ListRow, VisitDigest } from './digest';

const AT_ONCE = 5;

type Digests = Readonly<Record<string, VisitDigest>>;

/** The rows with results fetched as the office works them out, a few at a time, those in sight first. */
export function useDigests(rows: readonly ListRow[]): readonly ListRow[] {
  const [made, setMade] = useState<Digests>({});
  useEffect(() => {
    let open = true;
    const fetchAll = async () => {
      const missing = rows.filter((row) => row.digest === undefined).map(({ id }) => id);
      for (let at = 0; at < missing.length && open; at += AT_ONCE) {
        const more = await fetchSome(missing.slice(at, at + AT_ONCE));
        if (more === undefined) return;
        if (open) setMade((before) => ({ ...before, ...more }));
      }
    };
    void fetchAll();
    return () => {
      open = false;
    };
  }, [rows]);
  return rows.map((row) => {
    const digest = row.digest ?? made[row.id];
    return digest === undefined ? row : { ...row, digest };
  });
}

async function fetchSome(ids: readonly string[]): Promise<Digests | undefined> {
  const query = new URLSearchParams(ids.map((id) => ['id', id]));
  try {
    const answer = await fetch(`/digests.json?${query}`);
    return answer.ok ? ((await answer.json()) as Digests) : undefined;
  } catch {
    return undefined;
  }
}
