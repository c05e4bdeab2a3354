import type { Draft } from '@/components/draft/draft-tree';
import type { FieldBook } from '@/components/draft/field-book';
import { type DraftData, dataFromDraft, formPath } from '@/components/draft/typed-data';
import { t, tCode } from '@/components/words/words';
import { appraise } from '@/lib/appraise/appraise';
import { type Simulation, simulate } from '@/lib/finance/simulate';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import { type DraftReading, readDraft } from '@/lib/visit/read-visit';
import { answerView } from './answer-view';
import { leftOutChoices } from './left-out';
import type { View } from './view';

/** Reads a draft as far as it can be used; issues point to the rows of the form. */
export function readTyped(draft: Draft, book: FieldBook): DraftReading {
  const made: DraftData = dataFromDraft(draft, book, (kind) => tCode(`option.lineKind.${kind}`));
  const reading = readDraft(made.data);
  return {
    visit: reading.visit,
    issues: reading.issues.map((issue) => ({ ...issue, path: formPath(issue.path, made.rows) })),
  };
}

/** Draws and seed of the screens: the same draft always shows the same figures. */
const SIMULATION = { draws: 10_000, seed: 20_260_101 };

/** The simulation of a draft; nothing where it cannot be appraised. */
export function simulateDraft(draft: Draft, book: FieldBook): Simulation | undefined {
  const { visit } = readTyped(draft, book);
  if (visit === undefined) return undefined;
  try {
    return simulate({ ...appraise(visit), ...SIMULATION });
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
