import { describe, expect, test } from 'vitest';
import { cashFlowCsv, cashFlowRows } from '@/lib/sheet/cash-flow-csv';
import { csvText } from '@/lib/sheet/csv';
import { orificeComparison } from './fixtures/orifice-heat-pump';

describe('csvText', () => {
  test('identity: quoting of commas, quotes, line breaks and outer blanks', () => {
    expect(csvText([['a,b', 'c"d', 'e\nf', ' g', 'plain', undefined, 1.5]])).toBe(
      '"a,b","c""d","e\nf"," g",plain,,1.5\r\n',
    );
  });

  test('identity: a text that a spreadsheet would run is led by an apostrophe, a number is not', () => {
    const line = csvText([['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '  =1', '\r=1', 'a=b', '1-2']]).trimEnd();
    expect(line).toBe(`'=1+1,'+1,'-1,'@SUM(A1),'\t=1,'  =1,"'\r=1",a=b,1-2`);
    expect(csvText([[-12.5, '-12.5']])).toBe("-12.5,'-12.5\r\n");
  });
});

describe('cash flow', () => {
  const rows = cashFlowRows(orificeComparison, 'en');

  test('wiring: a heading and one row per choice and year', () => {
    const years = orificeComparison.choices.reduce((sum, choice) => sum + choice.rows.length, 0);
    expect(years).toBe(28);
    expect(rows.length).toBe(1 + years);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([14]));
  });

  test('wiring: the comparison\u2019s own numbers, half a cent going up', () => {
    const [first] = orificeComparison.choices;
    const row = first?.rows[1];
    const printed = rows[2];
    expect(printed?.[0]).toBe('Leave it as it is');
    expect(printed?.[2]).toBe(row?.year);
    expect(printed?.[5]).toBeCloseTo(row?.energyUsd ?? 0, 2);
    expect(printed?.[8]).toBe(300.01);
    expect(printed?.[13]).toBe(row?.failedByFrac);
  });

  test('identity: a choice named like a formula stays text', () => {
    const [first] = orificeComparison.choices;
    const named = {
      ...orificeComparison,
      choices: [{ ...first, name: '=HYPERLINK("x")' }],
    } as typeof orificeComparison;
    expect(cashFlowCsv(named, 'en').split('\r\n')[1]).toMatch(/^"'=HYPERLINK\(""x""\)",/);
  });
});
