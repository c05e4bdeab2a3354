import type { Draft } from '@/components/draft/draft-tree';
import type { FieldBook } from '@/components/draft/field-book';
import { t } from '@/components/words/words';
import type { Appraisal } from '@/lib/appraise/appraisal';
import { appraiseWith } from '@/lib/appraise/appraise-with';
import { simulateVisit } from '@/lib/appraise/simulate-visit';
import { climateFor } from '@/lib/energy/climate';
import type { Climate } from '@/lib/energy/climate-model';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import { answerView } from './answer-view';
import { type ChanceView, chanceView } from './chance-view';
import { leftOutChoices } from './left-out';
import { readTyped } from './read-typed';
import type { View } from './view';

/** Draws and seed of the screens: the same draft always shows the same figures. */
const SIMULATION = { draws: 10_000, seed: 20_260_101 };

/** What the screens show of a draft, and, asked for later, how its chances stand; the draft is appraised once for both. */
export type DraftAnswer = {
  readonly view: View;
  /** How often each choice costs least; nothing where it cannot be appraised or there is nothing to choose. */
  readonly chances: () => ChanceView | undefined;
};

/** What the screens show of a draft. */
export function buildView(draft: Draft, book: FieldBook): View {
  return answerDraft(draft, book).view;
}

/** The answer to a draft. Check: tests/screens/ask-appraisal.test.ts */
export function answerDraft(draft: Draft, book: FieldBook): DraftAnswer {
  const { visit, issues } = readTyped(draft, book);
  if (visit === undefined) return { view: { issues }, chances: () => undefined };
  try {
    const climate = climateFor(visit.site.climate, visit.site.stateCode);
    const appraisal = appraiseWith(visit, climate);
    const sheet = composeSheet({ ...appraisal, locale: 'en', leftOut: leftOutChoices(draft, issues, book) });
    return {
      view: { issues, answer: answerView(appraisal, sheet) },
      chances: () => chancesOf(appraisal, climate),
    };
  } catch (thrown) {
    const detail = thrown instanceof Error ? thrown.message : String(thrown);
    return { view: { issues, failure: t('answer.failure', { detail }) }, chances: () => undefined };
  }
}

function chancesOf(appraisal: Appraisal, climate: Climate): ChanceView | undefined {
  try {
    const simulated = simulateVisit(appraisal, climate, SIMULATION.draws, SIMULATION.seed);
    return chanceView(simulated, appraisal.comparison);
  } catch {
    // the answer itself stands; it is shown without chances
    return undefined;
  }
}
