import { type Composing, told } from './composing';
import { isRebateNote } from './financing-section';
import { flagWords } from './finding-section';
import { phrase } from './phrase';
import type { Sheet } from './sheet';

/** What was doubtful or could not be known, and what every stage noted about its own limits. */
export function doubtsSection(c: Composing): Sheet['pageTwo']['doubts'] {
  const { findings, energy, comparison } = c;
  const notes = [
    ...[findings.loss.heating, findings.loss.cooling].flatMap((loss) => loss?.notes ?? []),
    ...energy.notes,
    ...comparison.notes,
    ...comparison.choices.flatMap((choice) => choice.notes).filter((note) => !isRebateNote(note)),
  ];
  const sentences = [
    ...findings.flags.map((flag) => flagWords(c, flag)),
    ...notes.map((note) => told(c, note)),
  ];
  return { title: phrase(c.words, 'doubts.title'), sentences: [...new Set(sentences)] };
}

/** How many of the readings that would settle the cause are named. */
const nextTold = 1;

/** The reading that would settle the cause best, and those that would narrow the ranges most. */
export function surerSection(c: Composing): Sheet['pageTwo']['surer'] {
  const { causes, wouldNarrow } = c.findings;
  const next = causes?.verdict === 'noFaultFound' ? [] : (causes?.nextReadings ?? []).slice(0, nextTold);
  const sentences = [...next.map(({ saying }) => told(c, saying)), ...wouldNarrow.map((s) => told(c, s))];
  return {
    title: phrase(c.words, 'surer.title'),
    sentences: sentences.length === 0 ? [phrase(c.words, 'surer.none')] : sentences,
  };
}
