import type { Flag } from '../diagnostics/findings';
import { type Composing, told } from './composing';
import { isRebateNote } from './financing-section';
import { flagWords } from './finding-section';
import { phrase } from './phrase';
import type { Sheet } from './sheet';

/** Notes that an entry somebody made was not used. */
const REFUSALS: readonly string[] = ['ownBinsTooFew'];

/**
 * What was doubtful or could not be known, and what every stage noted about its own limits; entries that were not used
 * first, then what contradicts itself.
 *
 * Check: tests/sheet/doubts-section.test.ts
 */
export function doubtsSection(c: Composing): Sheet['pageTwo']['doubts'] {
  const { findings, energy, comparison } = c;
  const notes = [
    ...[findings.loss.heating, findings.loss.cooling].flatMap((loss) => loss?.notes ?? []),
    ...energy.notes,
    ...comparison.notes,
    ...comparison.choices.flatMap((choice) => choice.notes).filter((note) => !isRebateNote(note)),
  ];
  const isConflict = (flag: Flag) => flag.severity === 'conflict';
  const flags = [...findings.flags.filter(isConflict), ...findings.flags.filter((flag) => !isConflict(flag))];
  const refused = energy.notes.filter(({ code }) => REFUSALS.includes(code)).map((note) => told(c, note));
  const all = [...flags.map((flag) => flagWords(c, flag)), ...notes.map((note) => told(c, note))];
  const sentences = [...new Set([...refused, ...all])];
  return {
    title: phrase(c.words, 'doubts.title'),
    refused,
    sentences,
    omitted: omittedWords(c, sentences.length),
  };
}

/** How many doubts a page without room leaves out, in words, for every number of them. */
function omittedWords(c: Composing, total: number): string[] {
  return Array.from({ length: total + 1 }, (_, count) =>
    phrase(c.words, count === total ? 'doubts.allOmitted' : 'doubts.omitted', { count }),
  );
}

/** How many of the readings that would settle the cause are named. */
const nextTold = 1;

/** The reading that would settle the cause best, and those that would narrow the ranges most. */
export function surerSection(c: Composing): Sheet['pageTwo']['surer'] {
  const { causes, wouldNarrow } = c.findings;
  const next = causes?.verdict === 'noFaultFound' ? [] : (causes?.nextReadings ?? []).slice(0, nextTold);
  const sentences = [...next.map(({ saying }) => told(c, saying)), ...wouldNarrow.map((s) => told(c, s))];
  return { title: phrase(c.words, 'surer.title'), sentences };
}
