import { expect, it } from 'vitest';
import { say } from '@/lib/visit/wording';

const phrases = { 'a.b': 'The {what} reads {value} psig.' };

it('wiring: values are filled in; 0 is a value', () => {
  expect(say(phrases, { code: 'a.b', values: { what: 'gauge', value: 0 } })).toBe('The gauge reads 0 psig.');
});

it('wiring: a missing value or code is seen, not hidden', () => {
  expect(say(phrases, { code: 'a.b' })).toBe('The {what} reads {value} psig.');
  expect(say(phrases, { code: 'none' })).toBe('none');
});
