import { describe, expect, test } from 'vitest';
import { compareChoices } from '@/lib/finance/compare-choices';
import { comparisonModel, outcomeOf, totalsByStay } from '@/lib/finance/comparison-model';
import { breakEvenPrice, lowestByStay } from '@/lib/finance/recommend';
import en from '@/lib/finance/wording/en.json';
import type { Choice } from '@/lib/visit/choice';
import { say } from '@/lib/visit/wording';
import { near } from './checks';
import {
  allChoices,
  drier,
  energyOf,
  exampleCosts,
  exampleInput,
  leave,
  orifice,
  single,
  variable,
} from './fixtures';

const priced = (choice: Choice, usd: number): Choice => ({
  ...choice,
  priceLines: [{ kind: 'other', label: 'price', amount: 1, unitPriceUsd: usd }],
});
const exactCosts = Object.fromEntries(
  Object.entries(exampleCosts).map(([id, c]) => [id, { likely: c.likely }]),
);
const codes = (sayings: readonly { code: string }[]) => sayings.map((s) => s.code);

describe('recommendation', () => {
  test('property: the lowest total is recommended when no other is about the same', () => {
    const c = compareChoices({
      ...exampleInput({ choices: [leave, orifice] }),
      energy: energyOf(exactCosts),
    });
    expect(c.recommendation.choiceId).toBe('orifice');
    expect(c.recommendation.reason.code).toBe('choiceCostsLeast');
    const saved = Math.round(c.choices[1]?.netSavingUsd.likely ?? 0);
    expect(say(en, c.recommendation.reason)).toBe(
      `Over 10 years "Clean the orifice" costs least: about $${saved} less than "Leave as is".`,
    );
    expect(c.aboutTheSameIds).toEqual([]);
  });

  test('property: choices within the range of the lowest are named, and none is recommended on money', () => {
    const c = compareChoices(exampleInput());
    expect(c.lowestTotalId).toBe('orifice');
    expect(c.aboutTheSameIds).toEqual(['variable']);
    expect(c.recommendation.choiceId).toBeUndefined();
    expect(c.recommendation.reason.code).toBe('aboutTheSame');
    const same = c.choices
      // 1 - 1.2816 / 0.8416: where a normal difference is above zero four times in five
      .filter((x) => x.overLowestUsd.low <= -0.5227 * x.overLowestUsd.likely && x.id !== c.lowestTotalId)
      .map((x) => x.id);
    expect(same).toEqual(c.aboutTheSameIds);
  });

  test('property: a choice that wins four times in five is advised, with what it could cost at worst', () => {
    const energy = energyOf({
      ...exactCosts,
      orifice: { likely: 1650, recoveryLow: 1850, recoveryHigh: 1460 },
    });
    const sure = { key: 'repairSuccessFrac' as const, low: 1, likely: 1, high: 1, source: 'test' };
    const c = compareChoices({ ...exampleInput({ choices: [leave, orifice], assumptions: [sure] }), energy });
    expect(c.choices[0]?.overLowestUsd.low).toBeLessThan(0);
    expect(c.recommendation.choiceId).toBe('orifice');
    expect(say(en, c.recommendation.reason)).toContain('most likely costs least');
    expect(say(en, c.recommendation.reason)).not.toContain('{');
  });

  test('property: a healthy young unit is left alone', () => {
    const energy = energyOf({ ...exactCosts, asFound: { likely: 1450 }, orifice: { likely: 1440 } });
    const unit = { kind: 'heatPump', nominalTons: 3, manufactureYear: 2021 } as const;
    const c = compareChoices({
      ...exampleInput({ unit, convention: { residual: 'none' }, choices: [leave, orifice, single] }, 'none'),
      energy,
    });
    expect(c.recommendation.choiceId).toBe('leave');
    expect(c.recommendation.reason.code).toBe('leaveCostsLeast');
  });

  test('property: nothing to compare is said so, and a choice without a price is never ranked', () => {
    expect(compareChoices(exampleInput({ choices: [] })).recommendation).toEqual({
      reason: { code: 'nothingToCompare' },
      wouldChange: [],
    });
    const free = { ...orifice, priceLines: [] };
    const c = compareChoices(exampleInput({ choices: [leave, free] }));
    expect(c.lowestTotalId).toBe('leave');
    expect(c.recommendation.choiceId).toBeUndefined();
    expect(c.choices.map((x) => x.priced)).toEqual([true, false]);
  });
});

describe('value left at the end', () => {
  test('property: nothing is recommended when the lowest depends on what a newer unit is worth then', () => {
    // three years, a unit sure to last them, energy known: on a straight line most of a new unit's price comes back
    const input = {
      ...exampleInput({ choices: [leave, { ...variable, rebates: [] }], site: { stayYears: 3 } }, 'none'),
      energy: energyOf({ ...exactCosts, asFound: { likely: 2600 }, variable: { likely: 700 } }),
    };
    const c = compareChoices(input);
    expect([c.lowestTotalId, c.lowestByStay[2]?.choiceIdWithoutValueLeft]).toEqual(['variable', 'leave']);
    expect(c.aboutTheSameIds).toEqual([]);
    expect(c.recommendation.choiceId).toBeUndefined();
    expect(say(en, c.recommendation.reason)).toContain('If it counts for nothing, "Leave as is" does.');
    const none = compareChoices({ ...input, visit: { ...input.visit, convention: { residual: 'none' } } });
    expect(none.recommendation.choiceId).toBe('leave');
  });
});

describe('what would change it', () => {
  test('identity: at its break-even price a repair costs as much as the cheapest of the others', () => {
    const both = { ...drier, actions: [...drier.actions, ...orifice.actions] };
    const treating = allChoices.map((c) => (c.id === drier.id ? both : c));
    const plain = compareChoices(exampleInput({ choices: treating }));
    const repairs = plain.choices.filter((c) => c.kind === 'repair');
    expect(repairs).toHaveLength(2);
    for (const repair of repairs) {
      const cents = Math.round((repair.breakEvenPriceUsd ?? Number.NaN) * 100) / 100;
      const moved = treating.map((c) => (c.id === repair.id ? priced(c, cents) : c));
      const again = compareChoices(exampleInput({ choices: moved }));
      const own = again.choices.find((c) => c.id === repair.id)?.totalTodayUsd.likely ?? 0;
      const others = again.choices.filter((c) => c.id !== repair.id).map((c) => c.totalTodayUsd.likely);
      near(own, Math.min(...others), 0.0051, repair.id);
    }
  });

  test('identity: financing a repair does not move its cash break-even price', () => {
    const financed = {
      ...orifice,
      financing: { kind: 'levelLoan', rateFracPerYear: 0.15, termMonths: 24 },
    } as const;
    const priceOf = (choice: Choice) => {
      const model = comparisonModel(exampleInput({ choices: [leave, choice] }));
      return breakEvenPrice(
        model,
        1,
        model.choices.map((c) => outcomeOf(model, c, model.likely).totalTodayUsd),
      );
    };
    near(priceOf(financed) ?? 0, priceOf(orifice) ?? 1, 1e-6, 'break-even');
  });

  test('property: a repair that saves nothing has no price worth paying', () => {
    const energy = energyOf({ ...exactCosts, drier: { likely: 2400 } });
    const c = compareChoices({ ...exampleInput({ choices: [leave, drier] }, 'none'), energy });
    expect(c.choices[1]?.breakEvenPriceUsd).toBeUndefined();
    expect(codes(c.recommendation.wouldChange)).toContain('repairNeverLeast');
  });

  test('identity: the lowest choice by stay is that of a visit with that stay', () => {
    const model = comparisonModel(exampleInput());
    const byStay = lowestByStay(model);
    const stays = [1, 4, 10, 17, 25];
    const none = { convention: { residual: 'none' } } as const;
    expect(byStay).toHaveLength(25);
    expect(stays.map((n) => byStay[n - 1]?.choiceId)).toEqual(
      stays.map((stayYears) => compareChoices(exampleInput({ site: { stayYears } })).lowestTotalId),
    );
    expect(stays.map((n) => byStay[n - 1]?.choiceIdWithoutValueLeft)).toEqual(
      stays.map((stayYears) => compareChoices(exampleInput({ site: { stayYears }, ...none })).lowestTotalId),
    );
    const totals = totalsByStay(model, 25)[9]?.linear ?? [];
    expect(totals).toHaveLength(5);
    for (const [i, c] of model.choices.entries()) {
      near(totals[i] ?? 0, outcomeOf(model, c, model.likely).totalTodayUsd, 1e-8, c.choice.id);
    }
  });

  test('property: a stay is only said to change it when that holds without any value left, too', () => {
    // counted at its full straight-line value a new unit looks cheap for one or two years; nobody should be told so
    const c = compareChoices(exampleInput());
    const short = c.lowestByStay[0];
    expect([c.lowestTotalId, short?.choiceId, short?.choiceIdWithoutValueLeft]).toEqual([
      'orifice',
      'variable',
      'orifice',
    ]);
    expect(codes(c.recommendation.wouldChange)).not.toContain('shorterStay');
  });

  test('property: one choice that wins for every stay is said so', () => {
    const c = compareChoices({
      ...exampleInput({ choices: [leave, priced(orifice, 5)] }),
      energy: energyOf(exactCosts),
    });
    expect(c.recommendation.wouldChange.map((s) => say(en, s))[0]).toBe(
      'However long you stay (reckoned for 1 to 25 years), "Clean the orifice" costs least.',
    );
    expect(c.recommendation.lowestOnLikely).toBeUndefined();
  });

  test('property: where ranges overlap nothing is said as settled, only what the likely numbers say', () => {
    // the orifice nearly free: lowest for every stay, yet its range against the variable-speed unit holds zero
    const choices = allChoices.map((x) => (x.id === 'orifice' ? priced(orifice, 5) : x));
    const ties = [
      exampleInput(),
      exampleInput({ choices }),
      exampleInput({ choices: [leave, orifice] }),
      exampleInput({ convention: { residual: 'none' }, site: { stayYears: 4 } }),
    ]
      .map(compareChoices)
      .filter((c) => c.recommendation.reason.code === 'aboutTheSame');
    expect(ties.length).toBeGreaterThanOrEqual(2);
    for (const c of ties) {
      const { lowestOnLikely, wouldChange, choiceId } = c.recommendation;
      const name = c.choices.find((x) => x.id === c.lowestTotalId)?.name;
      expect(choiceId).toBeUndefined();
      expect(lowestOnLikely === undefined ? '' : say(en, lowestOnLikely)).toBe(
        `On the likely numbers, "${name}" is lowest, but the ranges overlap.`,
      );
      expect(wouldChange.length).toBeGreaterThan(0);
      const sentences = wouldChange.map((s) => say(en, s));
      expect(sentences.filter((s) => !s.includes('on the likely numbers') || s.includes('{'))).toEqual([]);
      expect(codes(wouldChange).filter((code) => code.endsWith('anyStay'))).toEqual([]);
    }
  });

  test('wiring: a stay counted in years has its singular', () => {
    const counting = Object.entries(en).filter(([code]) => /(shorter|longer)Stay$/.test(code));
    expect(counting).toHaveLength(4);
    for (const [code, sentence] of counting) {
      const one = (en as Record<string, string>)[`${code}.one`];
      expect(one, code).toBe(sentence.replace('{years} years', '1 year'));
    }
  });

  test('wiring: every code that can be said has its sentence, without gaps', () => {
    const all = [
      exampleInput(),
      exampleInput({ choices: [] }),
      exampleInput({ site: { stayYears: 2.5 }, choices: [single, { ...drier, priceLines: [] }] }),
    ]
      .map(compareChoices)
      .flatMap((c) => [
        ...c.notes,
        c.recommendation.reason,
        ...c.recommendation.wouldChange,
        ...c.choices.flatMap((x) => x.notes),
      ]);
    expect(all.length).toBeGreaterThan(15);
    const sentences = all.map((s) => say(en, s));
    expect(sentences.filter((s) => s.includes('{') || !s.includes(' '))).toEqual([]);
  });
});
