import type { Findings } from '../diagnostics/findings';
import type { EnergyResult, EnergyScenario } from '../energy/energy-result';
import type { ComparedChoice, Comparison } from '../finance/comparison';
import type { ResolvedAssumption } from '../visit/assumption';
import { CauseId } from '../visit/cause';
import type { Choice } from '../visit/choice';
import type { Visit } from '../visit/visit';
import type { Saying } from '../visit/wording';
import type { Trace } from './document-facts';
import { leaveNameOf } from './leave-name';
import { counted, phrase, type Words } from './phrase';
import { quantityName } from './reading-words';
import { type Names, stageWords } from './stage-words';

/** What every section of the sheet is composed from. */
export type Composing = {
  readonly visit: Visit;
  readonly findings: Findings;
  readonly energy: EnergyResult;
  readonly comparison: Comparison;
  readonly assumptions: readonly ResolvedAssumption[];
  readonly modelVersion: string;
  readonly trace?: Trace | undefined;
  readonly words: Words;
  readonly names: Names;
};

type Named = { readonly id: string; readonly name: string };

/** Names for the ids that sayings may carry. */
export function namesOf(words: Words, comparison: { readonly choices: readonly Named[] }): Names {
  return {
    choice: (id) => comparison.choices.find((choice) => choice.id === id)?.name ?? leaveNameOf(words, id),
    cause: (id) => {
      const cause = CauseId.safeParse(id);
      return cause.success ? phrase(words, `cause.${cause.data}`) : undefined;
    },
    reading: (name) => quantityName(words, name),
  };
}

/** A saying of an earlier stage, in words. */
export function told(c: Pick<Composing, 'words' | 'names'>, saying: Saying): string {
  return stageWords(c.words, saying, c.names);
}

/** "your 7 years", or "10 years (assumed)" when nobody asked. */
export function stayWords(c: Composing): string {
  const stem = c.visit.site.stayYears === undefined ? 'stay.assumed' : 'stay.asked';
  return counted(c.words, stem, c.comparison.stayYears);
}

/** The leave-it choice; undefined when a visit names none. */
export function leaveChoice(c: Composing): ComparedChoice | undefined {
  return c.comparison.choices.find((choice) => choice.kind === 'leave');
}

export function scenario(c: Composing, id: string): EnergyScenario | undefined {
  return c.energy.scenarios.find((s) => s.id === id);
}

/** The choice as entered in the visit. */
export function enteredChoice(c: Composing, id: string): Choice | undefined {
  return c.visit.choices.find((choice) => choice.id === id);
}

/** A name of a choice as it stands in a sentence. */
export function namesInQuotes(c: Composing, ids: readonly string[]): string[] {
  return ids.map((id) => `\u201c${c.names.choice(id) ?? id}\u201d`);
}
