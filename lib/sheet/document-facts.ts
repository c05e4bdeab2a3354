import type { Visit } from '../visit/visit';
import { counted, dateWords, phrase, type Words } from './phrase';
import type { CompanyLook, LabelledText } from './sheet';

/** Which stored state of a visit a paper was made from, so that a printed one can be traced. */
export type Trace = {
  /** Number of the saved revision; left out for a visit read from a file. */
  readonly revision?: number;
  /** First digits of the hash of the visit's data, computed where it is stored. */
  readonly hash: string;
};

/** What every document about a visit needs. */
export type DocumentInput = {
  readonly words: Words;
  readonly visit: Visit;
  readonly modelVersion: string;
  readonly trace?: Trace | undefined;
};

/** What a document says about itself; the heading is its own. */
export function documentFacts({ words, visit, modelVersion, trace }: DocumentInput, heading: string) {
  const date = dateWords(words, visit.visitDate);
  const values = { id: visit.id, date, version: modelVersion };
  return {
    languageTag: words.tag,
    documentTitle: `${heading} (${date})`,
    author: visit.company?.name ?? visit.technician ?? phrase(words, 'general.notGiven'),
    visitDate: visit.visitDate,
    footer:
      trace === undefined
        ? phrase(words, 'footer.line', values)
        : phrase(words, 'footer.traced', { ...values, hash: trace.hash }),
    pageOf: words.phrases['footer.page'],
    notDrawn: { label: phrase(words, 'notDrawn.label'), text: phrase(words, 'notDrawn.text') },
    ...lookOf(visit),
    ...(visit.invented === true ? { invented: phrase(words, 'heading.invented') } : {}),
  };
}

function lookOf(visit: Visit): { readonly look?: CompanyLook } {
  const { accent, logo } = visit.company ?? {};
  if (accent === undefined && logo === undefined) return {};
  return { look: { ...(accent === undefined ? {} : { accent }), ...(logo === undefined ? {} : { logo }) } };
}

/** Whose house, which unit, when and by whom, which company and which sheet. */
export function visitFacts({ words, visit, modelVersion, trace }: DocumentInput): LabelledText[] {
  const { site, unit, company, technician } = visit;
  const notGiven = phrase(words, 'general.notGiven');
  const date = dateWords(words, visit.visitDate);
  const place = [site.customer, site.street, site.town, site.stateCode].filter(isGiven);
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
    isGiven(company?.licence)
      ? phrase(words, 'fact.licence', { licence: company?.licence ?? '' })
      : undefined,
    company?.phone,
  ].filter(isGiven);
  const sheet = { id: visit.id, version: modelVersion };
  return [
    { label: phrase(words, 'fact.house'), text: place.length === 0 ? notGiven : place.join(', ') },
    { label: phrase(words, 'fact.unit'), text: plate.join(', ') },
    {
      label: phrase(words, 'fact.measured'),
      text: isGiven(technician)
        ? phrase(words, 'fact.measuredBy', { date, technician: technician ?? '' })
        : phrase(words, 'fact.measuredByNobody', { date }),
    },
    { label: phrase(words, 'fact.company'), text: firm.length === 0 ? notGiven : firm.join(', ') },
    {
      label: phrase(words, 'fact.sheet'),
      text:
        trace?.revision === undefined
          ? phrase(words, 'fact.sheetVersion', sheet)
          : phrase(words, 'fact.sheetRevision', { ...sheet, revision: trace.revision }),
    },
  ];
}

function isGiven(text: string | undefined): text is string {
  return text !== undefined && text.trim() !== '';
}
