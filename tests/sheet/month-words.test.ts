import { expect, test } from 'vitest';
import { monthName, monthRunWords } from '@/lib/sheet/month-words';
import { wordsOf } from '@/lib/sheet/phrase';
import { stageWords } from '@/lib/sheet/stage-words';

const words = wordsOf('en');

test('wiring: months are told by name, runs as from and to', () => {
  expect(monthName(words, 1, 'long')).toBe('January');
  expect(monthName(words, 12, 'narrow')).toBe('D');
  expect(monthRunWords(words, '1-5, 12')).toBe('Jan to May, Dec');
  expect(monthRunWords(words, '7')).toBe('Jul');
  expect(monthRunWords(words, 'some months')).toBe('some months');
});

test('wiring: a tariff without a price for a month names the month', () => {
  const names = { choice: () => undefined, cause: () => undefined, reading: () => undefined };
  const said = stageWords(words, { code: 'tariffMonthMissing', values: { months: '3-4' } }, names);
  expect(said).toMatch(/^The tariff names no price for Mar to Apr: /);
});
