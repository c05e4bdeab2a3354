import { expect, test } from 'vitest';
import { startAsker } from '@/components/appraisal/ask-appraisal';
import type { ChanceView } from '@/components/appraisal/chance-view';
import { fieldBook } from '@/components/draft/build-field-book';
import type { Draft } from '@/components/draft/draft-tree';

const draft: Draft = {
  schemaVersion: 1,
  id: 'no-workers',
  visitDate: '2026-11-25',
  site: { stayYears: '7' },
  unit: { kind: 'airConditioner', nominalTons: '3.5' },
  runs: [],
  observations: [],
  assumptions: [],
  choices: [
    { id: 'leave', kind: 'leave', name: 'Leave it', priceLines: [], rebates: [] },
    {
      id: 'wash',
      kind: 'repair',
      name: 'Wash the coil',
      actions: ['outdoorCoilCleaning'],
      priceLines: [{ kind: 'labour', label: 'Labour', amount: '2', unitPriceUsd: '140' }],
      rebates: [],
    },
  ],
};

test('wiring: where there are no workers the page answers each draft and then says how chances stand for the last', async () => {
  expect(typeof Worker).toBe('undefined');
  const answered: number[] = [];
  const { version, chances } = await new Promise<{ version: number; chances: ChanceView | undefined }>(
    (resolve) => {
      const asker = startAsker(
        fieldBook(),
        (v) => answered.push(v),
        (v, c) => resolve({ version: v, chances: c }),
      );
      asker.ask(1, draft);
      asker.ask(2, { ...draft, site: { stayYears: '8' } });
    },
  );
  expect(answered).toEqual([1, 2]);
  // the first was overtaken before it had been still
  expect(version).toBe(2);
  expect(chances?.rows.map((row) => row.id).sort()).toEqual(['leave', 'wash']);
});
