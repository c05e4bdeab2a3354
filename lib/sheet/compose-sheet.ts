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
import { doubtsSection, surerSection } from './doubts-section';
import { financingSection, rebatesSection } from './financing-section';
import { findingSection } from './finding-section';
import { counted, dateWords, type Locale, listWords, phrase, wordsOf } from './phrase';
import { readingsSection } from './readings-section';
import { runningCostSection } from './running-cost-section';
import type { LabelledText, Sheet } from './sheet';
import { totalsChart } from './totals-chart';

export type SheetInput = {
  readonly visit: Visit;
  readonly findings: Findings;
  readonly energy: EnergyResult;
  readonly comparison: Comparison;
  readonly assumptions: readonly ResolvedAssumption[];
  readonly locale: Locale;
  readonly modelVersion: string;
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
  const c: Composing = { ...input, words, names: namesOf(words, input.comparison) };
  return { ...documentFacts(c), pageOne: pageOne(c, input.leftOut ?? []), pageTwo: pageTwo(c) };
}

function documentFacts(c: Composing): Omit<Sheet, 'pageOne' | 'pageTwo'> {
  const { words, visit } = c;
  const heading = phrase(words, 'heading.main', { unit: phrase(words, `unit.${visit.unit.kind}`) });
  const date = dateWords(words, visit.visitDate);
  return {
    locale: words.locale,
    languageTag: words.tag,
    documentTitle: `${heading} (${date})`,
    subject: phrase(words, 'meta.subject'),
    author: visit.company?.name ?? visit.technician ?? phrase(words, 'general.notGiven'),
    reference: visit.id,
    visitDate: visit.visitDate,
    modelVersion: c.modelVersion,
    footer: phrase(words, 'footer.line', { id: visit.id, date, version: c.modelVersion }),
    pageOf: words.phrases['footer.page'],
    notDrawn: { label: phrase(words, 'notDrawn.label'), text: phrase(words, 'notDrawn.text') },
  };
}

function pageOne(c: Composing, leftOut: NonNullable<SheetInput['leftOut']>): Sheet['pageOne'] {
  const { words, visit, comparison } = c;
  const shown = shownChoices(c);
  const more = shown.pageTwo.map((choice) => choice.id);
  const rate = ratePercent(c, comparison.discountFracPerYear);
  return {
    heading: phrase(words, 'heading.main', { unit: phrase(words, `unit.${visit.unit.kind}`) }),
    ...(visit.invented === true ? { invented: phrase(words, 'heading.invented') } : {}),
    facts: facts(c),
    finding: findingSection(c),
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
    ],
    waiting: waitingSection(c),
    advice: adviceSection(c),
  };
}

function leftOutWords(c: Composing, leftOut: NonNullable<SheetInput['leftOut']>): string {
  const items = leftOut.map((choice) => phrase(c.words, 'choices.leftOutItem', choice));
  return phrase(c.words, 'choices.leftOut', { list: items.join('; ') });
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
    cautions: cautionsSection(c),
    excluded: excludedSection(c),
    validity: validitySection(c),
    signature: signatureSection(c),
  };
}

function facts(c: Composing): LabelledText[] {
  const { words, visit } = c;
  const { site, unit, company, technician } = visit;
  const notGiven = phrase(words, 'general.notGiven');
  const date = dateWords(words, visit.visitDate);
  const place = [site.customer, site.street, site.town, site.stateCode].filter(
    (p) => p !== undefined && p !== '',
  );
  const plate = [
    phrase(words, `unit.${unit.kind}`),
    counted(words, 'unit.tons', unit.nominalTons),
    unit.manufactureYear === undefined
      ? phrase(words, 'unit.madeUnknown')
      : phrase(words, 'unit.made', { year: unit.manufactureYear }),
    unit.refrigerant === undefined
      ? phrase(words, 'unit.refrigerantUnknown')
      : phrase(words, 'unit.refrigerant', { name: unit.refrigerant }),
  ];
  const firm = [
    company?.name,
    company?.licence === undefined ? undefined : phrase(words, 'fact.licence', { licence: company.licence }),
    company?.phone,
  ].filter((p) => p !== undefined && p !== '');
  return [
    { label: phrase(words, 'fact.house'), text: place.length === 0 ? notGiven : place.join(', ') },
    { label: phrase(words, 'fact.unit'), text: plate.join(', ') },
    {
      label: phrase(words, 'fact.measured'),
      text:
        technician === undefined || technician === ''
          ? phrase(words, 'fact.measuredByNobody', { date })
          : phrase(words, 'fact.measuredBy', { date, technician }),
    },
    { label: phrase(words, 'fact.company'), text: firm.length === 0 ? notGiven : firm.join(', ') },
    {
      label: phrase(words, 'fact.sheet'),
      text: phrase(words, 'fact.sheetVersion', { id: visit.id, version: c.modelVersion }),
    },
  ];
}
