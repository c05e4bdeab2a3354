import { fieldAt } from '../visit/field-at';
import { fieldLabel, unitLabel } from '../visit/field-words';
import { cautionsSection } from './cautions-section';
import type { SheetInput } from './compose-sheet';
import { type Composing, namesOf } from './composing';
import { documentFacts, visitFacts } from './document-facts';
import { withLeaveName } from './leave-name';
import { type PhraseCode, phrase, plainNumber, wordsOf } from './phrase';
import type { PlainDocument, PlainSection } from './plain-document';
import { optionWords } from './reading-words';
import { causesSections, flagsSection, lossSection } from './record-causes';
import { choicesSection, energySection, sourcesSection, stepNotesSection } from './record-money';
import { runSections } from './record-readings';
import type { LabelledText } from './sheet';

/**
 * The technician's record, as data: everything read, seen, worked out and assumed in a visit, with its sources; for the
 * file and for the next technician.
 *
 * @param input  one appraisal and the language to write it in
 * @throws invariant if a sentence lacks a value (a bug, never bad input)
 * Check: tests/sheet/record.test.ts
 */
export function composeRecord(input: SheetInput): PlainDocument {
  const words = wordsOf(input.locale);
  const comparison = withLeaveName(words, input.comparison);
  const c: Composing = { ...input, comparison, words, names: namesOf(words, comparison) };
  const heading = phrase(words, 'record.heading', { unit: phrase(words, `unit.${input.visit.unit.kind}`) });
  return {
    ...documentFacts(c, heading),
    subject: phrase(words, 'record.subject'),
    heading,
    facts: visitFacts(c),
    sections: [
      unitSection(c),
      ...seenSections(c),
      flagsSection(c),
      ...runSections(c),
      ...causesSections(c),
      lossSection(c),
      energySection(c),
      choicesSection(c),
      sourcesSection(c),
      stepNotesSection(c),
      { id: 'cautions', weight: 'evidence', ...cautionsSection(c, false) },
    ],
  };
}

/** Everything entered of the unit's plate and of the house. */
function unitSection(c: Composing): PlainSection {
  const { unit, site } = c.visit;
  const { kind: _kind, note: _note, chargingTables: _tables, ratings, ...plate } = unit;
  const { customer: _c, street: _s, town: _t, stateCode: _st, climate: _cl, ...house } = site;
  return {
    id: 'unit',
    title: phrase(c.words, 'record.visitTitle'),
    weight: 'evidence',
    facts: [
      ...entered(c, ['unit'], plate),
      ...entered(c, ['unit', 'ratings'], ratings ?? {}),
      ...entered(c, ['site'], house),
    ],
  };
}

function entered(
  c: Composing,
  path: readonly string[],
  record: Readonly<Record<string, unknown>>,
): LabelledText[] {
  return Object.entries(record).flatMap(([key, value]) => {
    const { unit } = fieldAt([...path, key]);
    const label = fieldLabel(c.words.fields, [...path, key]);
    if (typeof value === 'boolean') {
      return [{ label, text: phrase(c.words, value ? 'record.outcome.yes' : 'record.outcome.no') }];
    }
    if (typeof value !== 'number' && typeof value !== 'string') return [];
    const shown = typeof value === 'number' ? numberWords(c, value, unit) : optionWords(c.words, value);
    return [{ label, text: shown }];
  });
}

function numberWords(c: Composing, value: number, unit: string | undefined): string {
  if (unit === 'year') return String(value);
  const number = plainNumber(c.words, value, 2);
  const shown = unit === undefined ? '' : unitLabel(c.words.fields, unit);
  return shown === '' ? number : phrase(c.words, 'readings.withUnit', { value: number, unit: shown });
}

/** What was seen, who suspects what, and every note, whole. */
function seenSections(c: Composing): PlainSection[] {
  const { words, visit } = c;
  const seen = visit.observations.map((o) => {
    const text = phrase(words, `seen.${o.id}` as PhraseCode);
    return o.note === undefined ? text : `${text}: ${o.note}`;
  });
  const suspected = visit.suspectedCause;
  const facts: LabelledText[] = [
    ...(seen.length === 0 ? [] : [{ label: phrase(words, 'record.seenTitle'), text: seen.join('; ') }]),
    ...(suspected === undefined
      ? []
      : [
          {
            label: phrase(words, 'record.suspected'),
            text: [words.stages[`cause.${suspected.cause}`] ?? suspected.cause, suspected.note]
              .filter((part) => part !== undefined)
              .join(': '),
          },
        ]),
    ...[visit.note, visit.unit.note, ...visit.choices.map((choice) => choice.note)].flatMap((note) =>
      note === undefined || note.trim() === '' ? [] : [{ label: phrase(words, 'record.note'), text: note }],
    ),
  ];
  return facts.length === 0
    ? []
    : [{ id: 'seen', title: phrase(words, 'record.notesTitle'), weight: 'evidence', facts }];
}
