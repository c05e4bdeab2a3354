import type { Draft } from '@/components/draft/draft-tree';
import type { FieldBook } from '@/components/draft/field-book';
import { t } from '@/components/words/words';
import { appraise } from '@/lib/appraise/appraise';
import { appraiseWith } from '@/lib/appraise/appraise-with';
import { simulateVisit } from '@/lib/appraise/simulate-visit';
import { climateFor } from '@/lib/energy/climate';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import { answerView } from './answer-view';
import { type ChanceView, chanceView } from './chance-view';
import { leftOutChoices } from './left-out';
import { readTyped } from './read-typed';
import type { View } from './view';

/** Draws and seed of the screens: the same draft always shows the same figures. */
const SIMULATION = { draws: 10_000, seed: 20_260_101 };

/** How often each choice of a draft costs least; nothing where it cannot be appraised or there is nothing to choose. */
export function chancesOfDraft(draft: Draft, book: FieldBook): ChanceView | undefined {
  const { visit } = readTyped(draft, book);
  if (visit === undefined) return undefined;
  try {
    const climate = climateFor(visit.site.climate, visit.site.stateCode);
    const appraisal = appraiseWith(visit, climate);
    return chanceView(
      simulateVisit(appraisal, climate, SIMULATION.draws, SIMULATION.seed),
      appraisal.comparison,
    );
  } catch {
    // what failed has been told with the answer already
    return undefined;
  }
}

/** What the screens show of a draft. */
export function buildView(draft: Draft, book: FieldBook): View {
  const reading = readTyped(draft, book);
  if (reading.visit === undefined) return { issues: reading.issues };
  try {
    const appraisal = appraise(reading.visit);
    const sheet = composeSheet({
      ...appraisal,
      locale: 'en',
      leftOut: leftOutChoices(draft, reading.issues, book),
    });
    return { issues: reading.issues, answer: answerView(appraisal, sheet) };
  } catch (thrown) {
    return {
      issues: reading.issues,
      failure: t('answer.failure', { detail: thrown instanceof Error ? thrown.message : String(thrown) }),
    };
  }
}
