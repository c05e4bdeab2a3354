import { expect, test } from 'vitest';
import { draftToText, MAX_DRAFT_BYTES } from '@/lib/store/draft-text';

/** A draft whose JSON is exactly so many bytes: `{"note":"…"}` is 11 bytes around the text. */
const draftOfBytes = (bytes: number) => ({ note: 'x'.repeat(bytes - 11) });

test('wiring: the size limit holds just inside, on, and just outside', () => {
  expect(draftToText(draftOfBytes(MAX_DRAFT_BYTES - 1)).ok).toBe(true);
  expect(draftToText(draftOfBytes(MAX_DRAFT_BYTES)).ok).toBe(true);
  const over = draftToText(draftOfBytes(MAX_DRAFT_BYTES + 1));
  expect(over).toEqual({
    ok: false,
    issues: [
      {
        code: 'outOfRange',
        path: '',
        label: 'Visit',
        value: '1,048,577 bytes',
        limit: 'JSON of at most 1,048,576 bytes',
        fix: 'Shorten the notes or remove runs or choices that are not needed, then save again.',
      },
    ],
  });
});

test('wiring: the limit counts bytes, not characters', () => {
  const snowmen = { note: '☃'.repeat(MAX_DRAFT_BYTES / 3) };
  expect(draftToText(snowmen).ok).toBe(false);
});

test('wiring: what JSON would change silently is refused and named', () => {
  const circular: Record<string, unknown> = {};
  circular.self = circular;
  let deep: unknown = 1;
  for (let i = 0; i < 200_000; i++) deep = [deep];
  const cases: readonly (readonly [draft: unknown, value: string])[] = [
    [{ run: { suctionPsig: Number.NaN } }, 'NaN in "suctionPsig"'],
    [{ price: Number.POSITIVE_INFINITY }, 'Infinity in "price"'],
    [{ n: 5n }, '5 in "n"'],
    [{ s: Symbol('x') }, 'Symbol(x) in "s"'],
    [undefined, 'nothing'],
    [circular, 'nested in itself or far too deeply'],
    [deep, 'nested in itself or far too deeply'],
  ];
  const values = cases.map(([draft]) => {
    const text = draftToText(draft);
    return text.ok ? 'kept' : text.issues[0]?.value;
  });
  expect(values).toEqual(cases.map(([, value]) => value));
  expect(values).toHaveLength(7);
});

test('wiring: an unfinished form is kept, a key without value is left out', () => {
  expect(draftToText({ runs: [{ suctionPsig: 'abc', liquidLineF: '' }], note: undefined })).toEqual({
    ok: true,
    value: '{"runs":[{"suctionPsig":"abc","liquidLineF":""}]}',
  });
});
