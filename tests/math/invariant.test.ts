import { describe, expect, test } from 'vitest';
import { assertNever, invariant } from '@/lib/math/invariant';

describe('invariant', () => {
  test('wiring: lets truth pass and throws the message otherwise', () => {
    expect(() => invariant(1 + 1 === 2, 'sum')).not.toThrow();
    for (const falsy of [false, 0, '', null, undefined, Number.NaN]) {
      expect(() => invariant(falsy, 'why it broke')).toThrow('invariant: why it broke');
    }
    expect.assertions(7);
  });

  test('wiring: an unhandled case names its value', () => {
    const stray = { kind: 'stray' } as unknown as never;
    expect(() => assertNever(stray)).toThrow('unhandled case {"kind":"stray"}');
  });

  test('wiring: the compiler refuses a case that is left over', () => {
    const pick = (x: 'a' | 'b'): number => {
      if (x === 'a') return 1;
      // @ts-expect-error 'b' is not handled
      return assertNever(x);
    };
    expect(pick('a')).toBe(1);
  });
});
