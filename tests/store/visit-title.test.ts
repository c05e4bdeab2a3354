import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Json } from '@/lib/store/json';
import { visitTitle } from '@/lib/store/visit-title';

test('wiring: title fields are taken as typed, numbers as text', () => {
  expect(
    visitTitle({
      invented: true,
      visitDate: '2026-02-03',
      technician: ' R. Example ',
      site: { customer: 'Example', street: '1 Elm', town: 'Millbrook', altitudeFt: 700 },
      unit: { kind: 'heatPump', nominalTons: 3.5, refrigerant: 'R-22' },
    }),
  ).toEqual({
    invented: true,
    visitDate: '2026-02-03',
    technician: 'R. Example',
    customer: 'Example',
    street: '1 Elm',
    town: 'Millbrook',
    unitKind: 'heatPump',
    nominalTons: '3.5',
    refrigerant: 'R-22',
  });
});

test('wiring: a long text is cut to 120 characters without splitting one', () => {
  const title = visitTitle({ site: { customer: '😀'.repeat(130), town: ['not text'] } });
  expect(title).toEqual({ customer: '😀'.repeat(120) });
});

test('wiring: the note, the modes and what was chosen can be looked for', () => {
  const draft = {
    note: `Dog ${'x'.repeat(2_000)}`,
    runs: [{ mode: 'heating' }, { mode: 'heating' }, { mode: 'cooling' }, 'not a run', {}],
    choices: [{ id: 'leave', name: 'Leave it' }, { id: 'fix' }],
    chosen: { choiceId: 'leave', date: '2026-02-04' },
  };
  const title = visitTitle(draft);
  expect(title.note).toHaveLength(1_000);
  expect(title.modes).toEqual(['heating', 'cooling']);
  expect(title.chosen).toEqual({ name: 'Leave it', date: '2026-02-04' });
  expect(visitTitle({ ...draft, chosen: { choiceId: 'fix', date: '2026-02-04' } }).chosen?.name).toBe('fix');
  expect(
    visitTitle({ ...draft, chosen: { choiceId: 'taken-out', date: '2026-02-04' } }).chosen,
  ).toBeUndefined();
  expect(visitTitle({ ...draft, chosen: { choiceId: 'leave' } }).chosen).toBeUndefined();
});

test('property: a draft of any shape has a title, of short texts only', () => {
  let n = 0;
  fc.assert(
    fc.property(fc.jsonValue(), fc.jsonValue(), (site, unit) => {
      n += 1;
      const values = Object.values(visitTitle({ site, unit } as Json));
      expect(values.every((v) => typeof v === 'string' && v.length > 0 && [...v].length <= 120)).toBe(true);
      expect(visitTitle(site as Json)).toBeTypeOf('object');
    }),
    { seed: 3, numRuns: 300 },
  );
  expect(n).toBe(300);
});
