import { expect, test } from 'vitest';
import { withLeaveName } from '@/lib/sheet/leave-name';
import { wordsOf } from '@/lib/sheet/phrase';

test('wiring: the name that the product gives is told in the language; a typed one stays', () => {
  const given = { kind: 'leave', name: 'Leave as is' };
  const typed = { kind: 'leave', name: 'Keep it one more year' };
  const repair = { kind: 'repair', name: 'Leave as is' };
  const of = { choices: [given, typed, repair], stayYears: 7 };
  expect(withLeaveName(wordsOf('en'), of)).toEqual(of);
  expect(withLeaveName(wordsOf('es'), of).choices.map((choice) => choice.name)).toEqual([
    'Dejarlo como está',
    'Keep it one more year',
    'Leave as is',
  ]);
});
