import { expect, it } from 'vitest';
import { fieldBook } from '@/components/draft/build-field-book';
import { dataFromDraft } from '@/components/draft/typed-data';
import { issueSentence } from '@/components/form/issue-words';
import { readDraft } from '@/lib/visit/read-visit';

function sentenceFor(run: Record<string, string>): string[] {
  const draft = {
    schemaVersion: 1,
    id: 'a',
    visitDate: '2026-11-25',
    site: {},
    unit: { kind: 'heatPump', nominalTons: 3 },
    runs: [{ id: 'r1', mode: 'cooling', ...run }],
    observations: [],
    assumptions: [],
    choices: [],
  };
  const { data } = dataFromDraft(draft, fieldBook(), (kind) => kind);
  return readDraft(data).issues.map((issue) => issueSentence(issue, fieldBook()));
}

it('wiring: a number in another unit is not taken for the field’s own', () => {
  expect(sentenceFor({ suctionPsig: '118 A' })).toEqual([
    'Suction pressure is in psig, but “118 A” has another unit. Type the number in psig.',
  ]);
});

it('wiring: a pressure below zero typed without its sign says how to type it', () => {
  expect(sentenceFor({ returnStaticInWc: '0.4' })).toEqual([
    'Return static (before the blower) must be between -3 and 0 in. w.c.: type −0.4, or press ±.',
  ]);
});

it('wiring: the field’s own unit, typed along, is no issue', () => {
  expect(sentenceFor({ suctionPsig: '118 psi', grilleHeightIn: '20 in', outdoorAirF: '35 °F' })).toEqual([]);
});
