import { expect, test } from 'vitest';
import { minute, openIn, temporaryFolder } from './temporary-folder';

test('wiring: the list shows the latest revision of each visit, the one saved last first', async () => {
  const store = await openIn(temporaryFolder());
  const save = (id: string, baseRevision: number, at: number, customer: string) =>
    store.saveVisit({
      id,
      baseRevision,
      savedAt: minute(at),
      savedBy: 'Ada',
      draft: { site: { customer, town: 'Millbrook' }, unit: { kind: 'heatPump', nominalTons: '3,5' } },
    });
  expect(await save('a', 0, 1, 'First')).toEqual({ ok: true, revision: 1 });
  expect(await save('b', 0, 2, 'Second')).toEqual({ ok: true, revision: 1 });
  expect(await save('a', 1, 3, 'First, renamed')).toEqual({ ok: true, revision: 2 });

  expect(await store.listVisits()).toEqual([
    {
      id: 'a',
      revision: 2,
      savedAt: minute(3),
      savedBy: 'Ada',
      deleted: false,
      title: { customer: 'First, renamed', town: 'Millbrook', unitKind: 'heatPump', nominalTons: '3,5' },
    },
    {
      id: 'b',
      revision: 1,
      savedAt: minute(2),
      savedBy: 'Ada',
      deleted: false,
      title: { customer: 'Second', town: 'Millbrook', unitKind: 'heatPump', nominalTons: '3,5' },
    },
  ]);
});

test('identity: every revision comes back as it was typed, old ones too', async () => {
  const store = await openIn(temporaryFolder());
  const drafts = [
    { runs: [{ suctionPsig: '6' }] },
    {
      runs: [{ suctionPsig: '68,5 psi', note: 'naïve ☃ \u0000 "quoted" \\ \ud83d\ude00' }],
      empty: '',
      none: null,
    },
    { runs: [], __proto__x: { deep: [[[1.5, -0.1, 1e-12]]] } },
  ];
  for (const [i, draft] of drafts.entries()) {
    expect(
      await store.saveVisit({ id: 'v', baseRevision: i, savedAt: minute(i), savedBy: `Tech ${i}`, draft }),
    ).toEqual({ ok: true, revision: i + 1 });
  }
  const read = await Promise.all(drafts.map((_, i) => store.loadRevision('v', i + 1)));
  expect(read).toEqual(
    drafts.map((draft, i) => ({
      id: 'v',
      revision: i + 1,
      savedAt: minute(i),
      savedBy: `Tech ${i}`,
      deleted: false,
      draft,
    })),
  );
  expect(await store.loadVisit('v')).toEqual(read[2]);
  expect((await store.listRevisions('v')).map((r) => [r.revision, r.savedBy])).toEqual([
    [3, 'Tech 2'],
    [2, 'Tech 1'],
    [1, 'Tech 0'],
  ]);
});

test('wiring: what is not there is undefined or empty', async () => {
  const store = await openIn(temporaryFolder());
  await store.saveVisit({ id: 'v', baseRevision: 0, savedAt: minute(0), savedBy: 'Ada', draft: {} });
  expect(await store.loadVisit('w')).toBeUndefined();
  expect(await store.loadRevision('v', 0)).toBeUndefined();
  expect(await store.loadRevision('v', 2)).toBeUndefined();
  expect(await store.listRevisions('w')).toEqual([]);
  expect(await store.listVisits('deleted')).toEqual([]);
});
