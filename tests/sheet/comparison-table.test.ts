import { describe, expect, test } from 'vitest';
import { comparisonTable, tableText } from '@/lib/sheet/comparison-table';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import { crowdedInput } from './fixtures/crowded';
import { orificeInput } from './fixtures/orifice-heat-pump';

describe('comparisonTable', () => {
  const sheet = composeSheet(orificeInput);
  const table = comparisonTable(sheet, orificeInput.comparison);

  test('wiring: the words of the sheet, a column per choice, nothing blank', () => {
    expect(table.header).toEqual([
      'Choice',
      'Leave it as it is',
      'Clean the orifice, new filter-drier',
      'New single-speed heat pump',
      'New variable-speed heat pump',
    ]);
    expect(table.rows.map((row) => row.length)).toEqual(table.rows.map(() => 5));
    expect(table.rows.flat().filter((cell) => cell.trim() === '')).toEqual([]);
    expect(table.rows[2]).toEqual([
      'Running cost a year',
      'about $2,000 ($1,500 to $2,600)',
      'about $1,500 ($1,300 to $1,800)',
      'about $1,250 ($1,100 to $1,400)',
      'about $1,000 ($900 to $1,150)',
    ]);
  });

  test('wiring: a negative saving is told as an extra cost', () => {
    const saving = table.rows.at(-1);
    expect(saving?.[0]).toBe('Against leaving it');
    expect(saving?.[1]).toBe('none');
    expect(saving?.[4]).toBe('between $5,000 more and $4,000 less');
  });

  test('wiring: every choice has its column, also those on page two', () => {
    const crowded = comparisonTable(composeSheet(crowdedInput), crowdedInput.comparison);
    expect(crowded.header.length).toBe(1 + crowdedInput.comparison.choices.length);
    expect(crowded.header[7]).toMatch(/^6\. /);
  });
});

describe('tableText', () => {
  test('identity: columns stand under each other and long cells go on in the next line', () => {
    const text = tableText({ header: ['a', 'choice'], rows: [['x y z', 'one two three']] }, 7);
    expect(text).toBe(['a      choice', '-----  -------', 'x y z  one two', '       three'].join('\n'));
  });

  test('identity: a word longer than the column is kept whole', () => {
    expect(tableText({ header: ['abc'], rows: [['abcdefghij']] }, 4)).toContain('abcdefghij');
  });
});
