import { expect, test } from 'vitest';
import { cacheShaping } from '@/components/pdf/cache-shaping';

/** A font that counts how often it is asked. */
function countingFont() {
  const asked: string[] = [];
  const font = {
    hasGlyphForCodePoint: () => true,
    ascent: 1,
    descent: -1,
    unitsPerEm: 1,
    layout: (text: string) => {
      asked.push(text);
      return { glyphs: [...text], positions: [...text].map(() => ({ xAdvance: 5 })) };
    },
  };
  return { asked, font };
}

test('identity: a run is laid out once for the same text and features, anew for others', () => {
  const { asked, font } = countingFont();
  const cached = cacheShaping(font);
  const first = cached.layout('ab', ['tnum']);
  expect(cached.layout('ab', ['tnum'])).toEqual(first);
  cached.layout('ab');
  cached.layout('abc', ['tnum']);
  expect(asked).toEqual(['ab', 'ab', 'abc']);
});

test('regression: who scales positions in place spoils them for nobody else', () => {
  const cached = cacheShaping(countingFont().font);
  const run = cached.layout('ab');
  for (const position of run.positions as { xAdvance: number }[]) position.xAdvance *= 100;
  expect(cached.layout('ab').positions).toEqual([{ xAdvance: 5 }, { xAdvance: 5 }]);
});

test('identity: a font that lays out nothing is refused', () => {
  expect(() => cacheShaping({})).toThrow(/lays out no text/);
  expect(() => cacheShaping(undefined)).toThrow(/lays out no text/);
});
