import { say } from '@/lib/visit/wording';
import en from './decide.json';

/** Sentences that help to decide: made by the engine or shown by panels fetched later, so no page waits for them. */
export type DecideCode = keyof typeof en;

/** As `t`, for the sentences of decide.json. */
export function td(code: DecideCode, values?: Readonly<Record<string, string | number>>): string {
  return say(en, values === undefined ? { code } : { code, values });
}

/** Words of a code made at run time; a gap shows the code itself. */
export function tdCode(code: string): string {
  return say(en, { code });
}
