import type { ComparedChoice, Comparison } from '../finance/comparison';
import { savingWords } from './money-words';
import { phrase, type Words, wordsOf } from './phrase';
import type { Sheet } from './sheet';

/** A table of plain text: first column the row's name, then a column per choice. */
export type TextTable = { readonly header: readonly string[]; readonly rows: readonly (readonly string[])[] };

/**
 * The choices as plain rows, in the very words of the sheet, every choice shown; for the command line.
 *
 * @param sheet       composed from the same comparison
 * @param comparison  for the saving against leaving it
 * Check: tests/sheet/comparison-table.test.ts
 */
export function comparisonTable(sheet: Sheet, comparison: Comparison): TextTable {
  const words = wordsOf(sheet.locale);
  const tables = [
    sheet.pageOne.choices,
    ...(sheet.pageTwo.moreChoices === undefined ? [] : [sheet.pageTwo.moreChoices]),
  ];
  const columns = comparison.choices.flatMap((choice) =>
    tables.flatMap((table) => {
      const at = table.columns.findIndex((column) => column.id === choice.id);
      const column = table.columns[at];
      if (column === undefined) return [];
      const cells = table.rows.map((row) => row.cells[at]);
      return [
        { choice, column, texts: cells.map((cell) => cellText(cell?.main ?? '', cell?.details ?? [])) },
      ];
    }),
  );
  const saving = columns.map(({ choice }) => savingAgainst(words, choice));
  return {
    header: [
      phrase(words, 'table.choice'),
      ...columns.map(({ column }) =>
        column.mark === undefined ? column.name : `${column.name} [${column.mark}]`,
      ),
    ],
    rows: [
      ...sheet.pageOne.choices.rows.map((row, i) => [
        row.label,
        ...columns.map((column) => column.texts[i] ?? ''),
      ]),
      [phrase(words, 'table.saving'), ...saving],
    ],
  };
}

function savingAgainst(words: Words, choice: ComparedChoice): string {
  if (choice.kind === 'leave') return phrase(words, 'general.none');
  return choice.priced ? savingWords(words, choice.netSavingUsd) : phrase(words, 'general.notKnown');
}

/**
 * A text table as lines of equal columns, for a terminal.
 *
 * @param table        cells without line breaks
 * @param columnChars  widest column [characters]; longer cells go on in the next line
 * Check: tests/sheet/comparison-table.test.ts
 */
export function tableText(table: TextTable, columnChars = 24): string {
  const all = [table.header, ...table.rows].map((row) => row.map((cell) => wrap(cell, columnChars)));
  const widths = table.header.map((_, i) =>
    Math.max(...all.map((row) => Math.max(...(row[i] ?? ['']).map(length)))),
  );
  const rule = widths.map((width) => '-'.repeat(width)).join('  ');
  const blocks = all.map((row) => {
    const height = Math.max(...row.map((cell) => cell.length));
    return Array.from({ length: height }, (_, line) =>
      row
        .map((cell, i) => pad(cell[line] ?? '', widths[i] ?? 0))
        .join('  ')
        .trimEnd(),
    ).join('\n');
  });
  const [head, ...body] = blocks;
  return [head, rule, ...body].join('\n');
}

function cellText(main: string, details: readonly string[]): string {
  return details.length === 0 ? main : `${main} (${details.join('; ')})`;
}

function wrap(text: string, chars: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/)) {
    const last = lines.at(-1);
    if (last !== undefined && length(last) + 1 + length(word) <= chars)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines.length === 0 ? [''] : lines;
}

function length(text: string): number {
  return [...text].length;
}

function pad(text: string, chars: number): string {
  return text + ' '.repeat(Math.max(0, chars - length(text)));
}
