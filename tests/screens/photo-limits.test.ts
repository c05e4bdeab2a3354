import { expect, test } from 'vitest';
import { bytesWords, fittedSize } from '@/components/photos/photo-limits';

test('wiring: a picture is shrunk to 1,600 pixels on its longer edge and keeps its shape', () => {
  expect(fittedSize(4_000, 3_000)).toEqual({ width: 1_600, height: 1_200 });
  expect(fittedSize(3_000, 4_000)).toEqual({ width: 1_200, height: 1_600 });
  expect(fittedSize(1_600, 900)).toEqual({ width: 1_600, height: 900 });
  expect(fittedSize(640, 480)).toEqual({ width: 640, height: 480 });
  expect(fittedSize(9_000, 2)).toEqual({ width: 1_600, height: 1 });
});

test('wiring: bytes are told as a person reads them', () => {
  expect([bytesWords(10), bytesWords(340_400), bytesWords(999_499), bytesWords(1_240_000)]).toEqual([
    '1 kB',
    '340 kB',
    '999 kB',
    '1.2 MB',
  ]);
});
