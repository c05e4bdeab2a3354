import { expect, test } from 'vitest';
import { hatchStrokes } from '@/components/pdf/hatching';
import { breakLongWords } from '@/components/pdf/sheet-fonts';

test('property: strokes stay inside their box, whatever its shape', () => {
  const boxes = [
    { x: 10, y: 20, width: 80, height: 15 },
    { x: 0, y: 0, width: 12, height: 90 },
    { x: 5, y: 5, width: 1, height: 1 },
    { x: 5, y: 5, width: 30, height: 30 },
  ];
  const all = boxes.flatMap((box) => hatchStrokes(box, 4).map((stroke) => ({ box, stroke })));
  expect(all.length).toBeGreaterThan(40);
  const outside = all.filter(
    ({ box, stroke }) =>
      [stroke.x1, stroke.x2].some((x) => x < box.x - 1e-9 || x > box.x + box.width + 1e-9) ||
      [stroke.y1, stroke.y2].some((y) => y < box.y - 1e-9 || y > box.y + box.height + 1e-9),
  );
  expect(outside).toEqual([]);
  expect(hatchStrokes({ x: 0, y: 0, width: 0, height: 15 }, 4)).toEqual([]);
});

test('identity: only words longer than a column are broken, and nothing of them is lost', () => {
  expect(breakLongWords('variable-speed')).toEqual(['variable-speed']);
  const long = 'Donaudampfschifffahrtsgesellschaft';
  expect(breakLongWords(long).length).toBe(5);
  expect(breakLongWords(long).join('')).toBe(long);
  expect(breakLongWords(null)).toEqual([]);
});
