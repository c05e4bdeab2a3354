import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { answerView } from '@/components/appraisal/answer-view';
import { chanceView } from '@/components/appraisal/chance-view';
import type { AnswerView } from '@/components/appraisal/view';
import decide from '@/components/words/decide.json';
import words from '@/components/words/en.json';
import type { Appraisal } from '@/lib/appraise/appraisal';
import { appraise } from '@/lib/appraise/appraise';
import { simulate } from '@/lib/finance/simulate';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import { quotedWords } from '@/lib/sheet/money-words';
import type { Choice } from '@/lib/visit/choice';
import { readVisit } from '@/lib/visit/read-visit';
import type { Visit } from '@/lib/visit/visit';

function demo(name: string): Visit {
  const reading = readVisit(JSON.parse(readFileSync(`data-demo/${name}.json`, 'utf8')));
  if (!reading.ok) throw new Error(name);
  return reading.value;
}

function shown(visit: Visit): { appraisal: Appraisal; view: AnswerView } {
  const appraisal = appraise(visit);
  return { appraisal, view: answerView(appraisal, composeSheet({ ...appraisal, locale: 'en' })) };
}

const en = { ...words, ...decide };

const DEMOS = ['restricted-orifice', 'end-of-life', 'few-readings', 'healthy', 'short-stay'];
const all = DEMOS.map((name) => ({ name, ...shown(demo(name)) }));
const one = all[0] ?? never();

function never(): never {
  throw new Error('no demo');
}

/** Every text inside a view. */
function texts(node: unknown): string[] {
  if (typeof node === 'string') return [node];
  return typeof node === 'object' && node !== null ? Object.values(node).flatMap(texts) : [];
}

describe('what helps to decide', () => {
  test('wiring: no place is left unfilled and no code stands for words, in any demo', () => {
    const told = all.flatMap(({ view }) =>
      texts([
        view.drivers,
        view.repairs,
        view.later,
        view.investigate,
        view.flipMap,
        view.ways,
        view.cost.sentences,
      ]),
    );
    expect(told.length).toBeGreaterThan(300);
    expect(told.filter((text) => /[{}]|undefined|NaN|Infinity/.test(text))).toEqual([]);
    expect(told.filter((text) => /^[a-z]+[A-Za-z]*(\.[a-zA-Z]+)+$/.test(text) && !(text in en))).toEqual([]);
  });

  test('wiring: bars of one axis hold the likely saving, and the widest comes first', () => {
    for (const { name, view } of all) {
      for (const choice of view.drivers?.choices ?? []) {
        const widths = choice.rows.map((row) => row.to - row.from);
        expect(widths, `${name} ${choice.id}`).toEqual([...widths].sort((a, b) => b - a));
        expect(
          choice.rows.every((row) => row.from <= choice.likely && choice.likely <= row.to),
          `${name} ${choice.id}`,
        ).toBe(true);
      }
    }
  });

  test('wiring: the map names the cheapest choice of the visit at the framed field, or one about the same', () => {
    for (const { name, appraisal, view } of all) {
      const cells = view.flipMap?.rows.flatMap((row) => row.cells) ?? [];
      expect(cells.filter((cell) => cell.here).length, name).toBe(view.flipMap === undefined ? 0 : 1);
      const map = appraisal.comparison.flipMap;
      expect(cells.length, name).toBe((map?.stayYears.length ?? 0) * (map?.repairPricesUsd.length ?? 0));
    }
  });

  test('wiring: the best year is marked once where the years differ by more than the totals are sure to, and each year of the stay has its total', () => {
    for (const { name, appraisal, view } of all) {
      const rows = view.later?.rows ?? [];
      expect(rows.length, name).toBe(appraisal.comparison.replaceLater?.byYear.length ?? 0);
      const isFlat = rows.every((row) => row.mark === undefined);
      const said = view.later?.sentences.join(' ') ?? 'hardly changes the total';
      expect(said.includes('hardly changes the total'), name).toBe(isFlat);
      expect(rows.filter((row) => row.mark === en['later.lowest']).length, name).toBe(isFlat ? 0 : 1);
    }
  });

  test('wiring: a repair stands with its quoted price, both rules, and the full answer', () => {
    const { appraisal, view } = one;
    const repairs = appraisal.comparison.choices.filter((c) => c.kind === 'repair' && c.priced);
    expect(view.repairs.map((r) => r.price)).toEqual(repairs.map((c) => quotedWords(c.priceUsd)));
    expect(view.repairs.every((r) => r.rules.length === 2)).toBe(true);
  });
});

describe('chances', () => {
  test('property: the signs of all choices add up to ten, and the sentence names the most frequent', () => {
    for (const { name, appraisal } of all) {
      const view = chanceView(simulate({ ...appraisal, draws: 500, seed: 7 }), appraisal.comparison);
      const counts = view?.rows.map((row) => row.count) ?? [];
      expect(
        counts.reduce((a, b) => a + b, 0),
        name,
      ).toBe(10);
      const most = view?.rows.find((row) => row.count === Math.max(...counts));
      expect(view?.sentence, name).toContain(most?.name ?? 'none');
    }
  });

  test('wiring: with leaving it alone there are no chances', () => {
    const visit = demo('healthy');
    const appraisal = appraise({ ...visit, choices: visit.choices.filter((c) => c.kind === 'leave') });
    expect(chanceView(simulate({ ...appraisal, draws: 50, seed: 7 }), appraisal.comparison)).toBeUndefined();
  });
});

describe('ways to pay', () => {
  const withWays = (): AnswerView => {
    const visit = demo('end-of-life');
    const choices = visit.choices.map(
      (choice): Choice =>
        choice.kind === 'replace'
          ? {
              ...choice,
              financingOffers: [
                {
                  kind: 'promotional',
                  rateFracPerYear: 0.2699,
                  promotionMonths: 18,
                  termMonths: 60,
                  lender: 'An invented bank',
                },
                { kind: 'cash' },
              ],
            }
          : choice,
    );
    return shown({ ...visit, choices }).view;
  };

  test('wiring: a promotion stands with both endings, and every payment with APR, term, down payment and total', () => {
    const [choice] = withWays().ways;
    const ways = choice?.ways ?? [];
    expect(ways.map((way) => way.title)).toEqual([
      'Monthly (Millrace Credit Union (invented))',
      'Promotion without interest (An invented bank), paid in time',
      'Promotion without interest (An invented bank), not paid in time',
      en['option.financing.cash'],
    ]);
    const lent = ways.slice(0, 3);
    const labels = [en['ways.term'], en['ways.down'], en['ways.totalOfPayments'], en['ways.totalPaid']];
    expect(lent.every((way) => labels.every((label) => way.rows.some((row) => row.label === label)))).toBe(
      true,
    );
    expect(lent.every((way) => /^Annual percentage rate \(APR\): \d+\.\d\d\s%$/.test(way.apr ?? ''))).toBe(
      true,
    );
    expect(lent[0]?.disclosures.join(' ')).toContain('not an offer of credit');
    expect(lent[1]?.disclosures.join(' ')).toContain('Interest is charged from the first day');
    expect(ways.filter((way) => way.counted !== undefined).length).toBe(1);
  });

  test('wiring: where nothing is lent and one way was asked for, nothing is set side by side', () => {
    expect(shown(demo('few-readings')).view.ways).toEqual([]);
  });
});
