import type { Findings } from '../diagnostics/findings';
import type { EnergyResult } from '../energy/energy-result';
import type { Comparison } from '../finance/comparison';
import type { ResolvedAssumption } from '../visit/assumption';
import type { Visit } from '../visit/visit';
import { adviceSection, waitingSection } from './advice-section';
import { assumptionsSection, countsSection } from './assumptions-section';
import { cautionsSection, excludedSection, signatureSection, validitySection } from './cautions-section';
import { choiceTable, ratePercent, shownChoices } from './choice-table';
import { type Composing, namesInQuotes, namesOf } from './composing';
import { documentFacts, type Trace, visitFacts } from './document-facts';
import { doubtsSection, surerSection } from './doubts-section';
import { financingSection, rebatesSection } from './financing-section';
import { findingSection } from './finding-section';
import { withLeaveName } from './leave-name';
import { counted, type Locale, listWords, phrase, wordsOf } from './phrase';
import { readingsSection } from './readings-section';
import { runningCostSection } from './running-cost-section';
import type { Sheet } from './sheet';
import { totalsChart } from './totals-chart';

export type SheetInput = {
  readonly visit: Visit;
  readonly findings: Findings;
  readonly energy: EnergyResult;
  readonly comparison: Comparison;
  readonly assumptions: readonly ResolvedAssumption[];
  readonly locale: Locale;
  readonly modelVersion: string;
  /** Which stored state of the visit this is made from; left out where nothing is stored yet. */
  readonly trace?: Trace | undefined;
  /** Choices that were entered but cannot be used, each with the reason in words without a full stop. */
  readonly leftOut?: readonly { readonly name: string; readonly why: string }[];
};

/**
 * The sheet a customer keeps, as data: sections, rows, sentences and chart series. It words and rounds what the
 * earlier stages found and computes nothing of its own but differences that it prints.
 *
 * @param input  one appraisal and the language to write it in
 * @returns everything that stands on the two pages
 * @throws invariant if a sentence lacks a value (a bug, never bad input)
 * Check: tests/sheet/compose-sheet.test.ts
 */
export function composeSheet(input: SheetInput): Sheet {
  const words = wordsOf(input.locale);
  const comparison = withLeaveName(words, input.comparison);
  const c: Composing = { ...input, comparison, words, names: namesOf(words, comparison) };
  return { ...aboutSheet(c), pageOne: pageOne(c, input.leftOut ?? []), pageTwo: pageTwo(c) };
}

function aboutSheet(c: Composing): Omit<Sheet, 'pageOne' | 'pageTwo'> {
  const { invented: _onPageOne, ...about } = documentFacts(c, mainHeading(c));
  return {
    ...about,
    locale: c.words.locale,
    subject: phrase(c.words, 'meta.subject'),
    reference: c.visit.id,
    modelVersion: c.modelVersion,
  };
}

function mainHeading({ words, visit }: Composing): string {
  return phrase(words, 'heading.main', { unit: phrase(words, `unit.${visit.unit.kind}`) });
}

function pageOne(c: Composing, leftOut: NonNullable<SheetInput['leftOut']>): Sheet['pageOne'] {
  const { words, visit, comparison } = c;
  const shown = shownChoices(c);
  const more = shown.pageTwo.map((choice) => choice.id);
  const rate = ratePercent(c, comparison.discountFracPerYear);
  const finding = findingSection(c);
  return {
    heading: mainHeading(c),
    ...(visit.invented === true ? { invented: phrase(words, 'heading.invented') } : {}),
    facts: visitFacts(c),
    finding,
    runningCost: runningCostSection(c),
    choices: choiceTable(c, shown.pageOne, phrase(words, 'choices.title')),
    ...(leftOut.length === 0 ? {} : { leftOut: leftOutWords(c, leftOut) }),
    ...(more.length === 0
      ? {}
      : {
          moreChoices: counted(words, 'choices.more', more.length, {
            names: listWords(words, namesInQuotes(c, more)),
          }),
        }),
    totals: totalsChart(c, shown.pageOne),
    explanations: [
      phrase(words, comparison.residual === 'none' ? 'explain.noResidual' : 'explain.all'),
      phrase(words, 'explain.today', { rate }),
      phrase(words, 'explain.range'),
      phrase(words, 'explain.breakdown'),
      ...wordsExplained(c, [...finding.sentences, ...finding.dangers]),
    ],
    waiting: waitingSection(c),
    advice: adviceSection(c),
  };
}

/** Words of the trade that a sentence uses and none of them explains. */
function wordsExplained({ words }: Composing, sentences: readonly string[]): string[] {
  const text = sentences.join(' ').toLowerCase();
  const uses = text.includes(phrase(words, 'explain.compressor.word'));
  const explains = text.includes(phrase(words, 'explain.compressor.meaning'));
  return uses && !explains ? [phrase(words, 'explain.compressor')] : [];
}

function leftOutWords(c: Composing, leftOut: NonNullable<SheetInput['leftOut']>): string {
  const items = leftOut.map((choice) => phrase(c.words, 'choices.leftOutItem', choice));
  return phrase(c.words, 'choices.leftOut', { list: items.join('; ') });
}

/** A new unit now, or after a repair that only puts it off. */
function renews(c: Composing): boolean {
  return c.comparison.choices.some(({ kind }) => kind === 'replace' || kind === 'repairThenReplace');
}

function pageTwo(c: Composing): Sheet['pageTwo'] {
  const more = shownChoices(c).pageTwo;
  return {
    heading: phrase(c.words, 'heading.evidence'),
    ...(more.length === 0 ? {} : { moreChoices: choiceTable(c, more, phrase(c.words, 'choices.moreTitle')) }),
    readings: readingsSection(c),
    counts: countsSection(c),
    assumptions: assumptionsSection(c),
    doubts: doubtsSection(c),
    surer: surerSection(c),
    financing: financingSection(c),
    rebates: rebatesSection(c),
    cautions: cautionsSection(c, renews(c)),
    excluded: excludedSection(c),
    validity: validitySection(c),
    signature: signatureSection(c),
  };
}
