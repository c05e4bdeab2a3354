import { expect, test } from 'vitest';
import { createDraftStore } from '@/components/draft/draft-store';
import { differences, withValue } from '@/components/draft/draft-tree';

test('wiring: typing on in one field is one step of undo, another field is the next', () => {
  const store = createDraftStore({}, 1);
  for (const typed of ['1', '11', '118']) store.set('runs.a', typed, 'Suction pressure');
  store.set('site.town', 'Mossgate', 'Town');
  expect(store.get().past.map((step) => step.what)).toEqual(['Suction pressure', 'Town']);
  store.undo();
  expect(store.get().draft).toEqual({ runs: { a: '118' } });
  store.undo();
  expect(store.get().draft).toEqual({});
});

test('wiring: an answered save counts only for the version it carried', () => {
  const store = createDraftStore({}, 1);
  store.set('note', 'a', 'Note');
  const { version } = store.get();
  store.set('note', 'ab', 'Note');
  store.noteSent(version, 2, 0);
  expect(store.get().sentVersion).not.toBe(store.get().version);
  expect(store.get().baseRevision).toBe(2);
});

test('wiring: settling a conflict goes on from the other revision', () => {
  const store = createDraftStore({ note: 'here' }, 1);
  store.noteConflict({ theirs: { note: 'there' }, theirRevision: 7 });
  store.settle({ note: 'here' });
  expect(store.get().conflict).toBeUndefined();
  expect(store.get().baseRevision).toBe(7);
  expect(store.get().version).not.toBe(store.get().sentVersion);
});

test('wiring: setting and taking away values never touches the tree given', () => {
  const tree = { runs: [{ id: 'a' }, { id: 'b' }] };
  const changed = withValue(tree, 'runs.0', undefined);
  expect(changed).toEqual({ runs: [{ id: 'b' }] });
  expect(tree).toEqual({ runs: [{ id: 'a' }, { id: 'b' }] });
  expect(withValue({}, 'site.climate.kind', 'city')).toEqual({ site: { climate: { kind: 'city' } } });
});

test('wiring: differences name each field once, also where a row exists on one side only', () => {
  const mine = { site: { town: 'Mossgate' }, runs: [{ id: 'a', suctionPsig: '118' }] };
  const theirs = { site: { town: 'Mossgate' }, runs: [{ id: 'a', suctionPsig: 120 }, { id: 'b' }] };
  expect(differences(mine, theirs)).toEqual([
    { path: 'runs.0.suctionPsig', mine: '118', theirs: '120' },
    { path: 'runs.1.id', mine: '', theirs: 'b' },
  ]);
});
