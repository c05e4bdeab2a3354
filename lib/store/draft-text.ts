import type { Result } from '../visit/issue';
import type { Json } from './json';

/** Largest draft kept, in bytes of JSON: some two hundred times a full visit. Our own limit. */
export const MAX_DRAFT_BYTES = 1_048_576;

/**
 * The draft as the JSON text that is kept.
 *
 * @param draft anything; unfinished forms are welcome, what JSON would change silently is refused
 * @returns the text, or why it cannot be kept
 * Check: tests/store/draft-text.test.ts
 */
export function draftToText(draft: unknown): Result<string> {
  let unkept: { key: string; value: unknown } | undefined;
  let text: string | undefined;
  try {
    text = JSON.stringify(draft, (key, value: unknown) => {
      if (unkept === undefined && !survivesJson(value)) unkept = { key, value };
      return typeof value === 'bigint' ? String(value) : value;
    });
  } catch {
    return refusal(
      'nested in itself or far too deeply',
      'Reload the page and type the last change again; if this returns, report it.',
    );
  }
  if (text === undefined || unkept !== undefined) {
    const what = unkept === undefined ? 'nothing' : `${String(unkept.value)} in "${unkept.key}"`;
    return refusal(what, 'Only text, numbers, yes/no and lists can be saved: correct that field.');
  }
  const bytes = new TextEncoder().encode(text).length;
  if (bytes > MAX_DRAFT_BYTES) {
    return refusal(
      `${bytes.toLocaleString('en-US')} bytes`,
      'Shorten the notes or remove runs or choices that are not needed, then save again.',
    );
  }
  return { ok: true, value: text };
}

/** The draft back from its text. */
export function draftFromText(text: string): Json {
  return JSON.parse(text) as Json;
}

function survivesJson(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  return typeof value !== 'function' && typeof value !== 'symbol' && typeof value !== 'bigint';
}

function refusal(value: string, fix: string): Result<string> {
  return {
    ok: false,
    issues: [
      {
        code: 'outOfRange',
        path: '',
        label: 'Visit',
        value,
        limit: `JSON of at most ${MAX_DRAFT_BYTES.toLocaleString('en-US')} bytes`,
        fix,
      },
    ],
  };
}
