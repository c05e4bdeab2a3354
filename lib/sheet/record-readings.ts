import type { DerivedValue, RunFindings, Target } from '../diagnostics/findings';
import { assumptionLabel, fieldLabel } from '../visit/field-words';
import type { Run } from '../visit/run';
import { Site } from '../visit/site';
import { Unit } from '../visit/unit';
import { type Composing, told } from './composing';
import { lowerFirst, type PhraseCode, phrase, plainNumber } from './phrase';
import type { PlainSection, PlainTable } from './plain-document';
import { quantityName, quantityRangeWords, quantityWords } from './reading-words';
import { rawReadings } from './readings-section';

/** Of every run: what was read, what follows from it, and what a healthy unit would show. */
export function runSections(c: Composing): PlainSection[] {
  return c.visit.runs.flatMap((run, i) => {
    const found = c.findings.runs.find((r) => r.runId === run.id);
    const label = runLabel(c, run, i);
    return [
      readSection(c, run, label),
      ...(found === undefined ? [] : [derivedSection(c, found, label), targetsSection(c, found, label)]),
    ].filter((section) => !isEmpty(section));
  });
}

function isEmpty(section: PlainSection): boolean {
  return (
    (section.sentences ?? []).length === 0 && (section.tables ?? []).every((table) => table.rows.length === 0)
  );
}

/** The run's own name, or its number. */
export function runLabel(c: Composing, run: Run, position: number): string {
  const mode = phrase(c.words, run.mode === 'heating' ? 'readings.modeHeating' : 'readings.modeCooling');
  return run.label === undefined || run.label.trim() === ''
    ? phrase(c.words, 'readings.runUnnamed', { number: position + 1, mode })
    : run.label;
}

function readSection(c: Composing, run: Run, label: string): PlainSection {
  const { words } = c;
  const mode = phrase(words, run.mode === 'heating' ? 'readings.modeHeating' : 'readings.modeCooling');
  const points = run.grilleFacePointsFpm ?? [];
  const row = (name: string, value: string) => ({ cells: [name, value] });
  return {
    id: `read-${run.id}`,
    title: phrase(words, 'record.runTitle', { label, mode }),
    weight: 'evidence',
    sentences: run.note === undefined ? [] : [run.note],
    tables: [
      {
        caption: phrase(words, 'record.runTitle', { label, mode }),
        columns: [
          { label: phrase(words, 'readings.columnName'), align: 'left', share: 0.7 },
          { label: phrase(words, 'record.columnValue'), align: 'right', share: 0.3 },
        ],
        rows: [
          ...rawReadings(words, run).map((r) => row(r.label, quantityWords(words, r.value, r.unit))),
          ...(points.length === 0
            ? []
            : [
                row(
                  fieldLabel(words.fields, ['runs', '0', 'grilleFacePointsFpm', '0']),
                  points.map((point) => plainNumber(words, point, 0)).join(', '),
                ),
              ]),
          ...(run.electricHeatOn === undefined
            ? []
            : [row(fieldLabel(words.fields, ['runs', '0', 'electricHeatOn']), yesNo(c, run.electricHeatOn))]),
        ],
      },
    ],
  };
}

function yesNo({ words }: Composing, value: boolean): string {
  return phrase(words, value ? 'record.outcome.yes' : 'record.outcome.no');
}

function derivedSection(c: Composing, found: RunFindings, label: string): PlainSection {
  const { words } = c;
  const title = phrase(words, 'record.derivedTitle', { label });
  const table: PlainTable = {
    caption: title,
    columns: [
      { label: phrase(words, 'readings.columnName'), align: 'left', share: 0.18 },
      { label: phrase(words, 'record.columnValue'), align: 'right', share: 0.13 },
      { label: phrase(words, 'record.columnUncertain'), align: 'right', share: 0.11 },
      { label: phrase(words, 'record.columnFormula'), align: 'left', share: 0.34 },
      { label: phrase(words, 'record.columnSource'), align: 'left', share: 0.24 },
    ],
    rows: found.derived.map((value) => ({
      cells: [
        quantityName(words, value.id) ?? value.id,
        quantityWords(words, value.value, value.unit),
        quantityWords(words, value.sd, value.unit),
        `${value.formula}: ${inputWords(c, value)}`,
        value.source,
      ],
    })),
  };
  return { id: `derived-${found.runId}`, title, weight: 'evidence', tables: [table] };
}

/** Inputs of a derived value with where each comes from. */
function inputWords(c: Composing, value: DerivedValue): string {
  return value.inputs
    .map((input) => {
      const name = lowerFirst(inputName(c, input.name));
      const amount =
        typeof input.value === 'number' ? quantityWords(c.words, input.value, input.unit) : input.value;
      return `${name} ${amount} (${phrase(c.words, `basis.${input.basis}`)})`;
    })
    .join('; ');
}

/** An input's name wherever it was entered; one without a name is shown as it is. */
function inputName(c: Composing, key: string): string {
  const own = `record.input.${key}`;
  if (own in c.words.phrases) return phrase(c.words, own as PhraseCode);
  const place = [['unit', Unit.shape] as const, ['site', Site.shape] as const].find(
    ([, shape]) => key in shape,
  );
  const assumption = c.assumptions.find((a) => a.key === key);
  return (
    quantityName(c.words, key) ??
    (assumption === undefined ? undefined : assumptionLabel(c.words.fields, assumption)) ??
    (place === undefined ? key : fieldLabel(c.words.fields, [place[0], key]))
  );
}

function targetsSection(c: Composing, found: RunFindings, label: string): PlainSection {
  const { words } = c;
  const title = phrase(words, 'record.targetsTitle', { label });
  const table: PlainTable = {
    caption: title,
    columns: [
      { label: phrase(words, 'readings.columnName'), align: 'left', share: 0.24 },
      { label: phrase(words, 'readings.columnReading'), align: 'right', share: 0.12 },
      { label: phrase(words, 'readings.columnTarget'), align: 'right', share: 0.16 },
      { label: phrase(words, 'readings.columnVerdict'), align: 'left', share: 0.1 },
      { label: phrase(words, 'record.columnSource'), align: 'left', share: 0.26 },
      { label: phrase(words, 'record.columnStatus'), align: 'left', share: 0.12 },
    ],
    rows: found.targets.map((target) => targetRow(c, target, found)),
  };
  const none = (found.noTargets ?? []).map(({ id, note }) =>
    phrase(words, 'record.noTargetsFor', {
      name: lowerFirst(quantityName(words, id) ?? id),
      why: told(c, note),
    }),
  );
  return { id: `targets-${found.runId}`, title, weight: 'evidence', tables: [table], sentences: none };
}

function targetRow(c: Composing, target: Target, found: RunFindings): PlainTable['rows'][number] {
  const { words } = c;
  const reading = target.reading ?? found.derived.find((d) => d.id === target.id)?.value;
  const note = target.note === undefined ? '' : ` ${told(c, target.note)}`;
  return {
    strong: target.verdict === 'above' || target.verdict === 'below',
    cells: [
      quantityName(words, target.id) ?? target.id,
      reading === undefined ? phrase(words, 'after.notRead') : quantityWords(words, reading, target.unit),
      quantityRangeWords(words, target.low, target.high, target.unit),
      phrase(words, target.verdict === undefined ? 'verdict.none' : `verdict.${target.verdict}`),
      `${target.source}${note === '' ? '' : '.'}${note}`,
      statusWords(c, target.status),
    ],
  };
}

/** How well a source is known; a status without words is shown as it is. */
export function statusWords({ words }: Composing, status: string): string {
  const code = `record.statusWord.${status}`;
  return code in words.phrases ? phrase(words, code as PhraseCode) : status;
}
