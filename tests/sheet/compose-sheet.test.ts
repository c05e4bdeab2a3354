import { describe, expect, test } from 'vitest';
import type { CauseFinding, CausesFound } from '@/lib/diagnostics/findings';
import type { Comparison } from '@/lib/finance/comparison';
import { estimate } from '@/lib/math/estimate';
import { composeSheet, type SheetInput } from '@/lib/sheet/compose-sheet';
import type { CauseId } from '@/lib/visit/cause';
import { allTexts } from './fixtures/all-texts';
import { crowdedInput } from './fixtures/crowded';
import { orificeInput } from './fixtures/orifice-heat-pump';

const sheet = composeSheet(orificeInput);
const one = sheet.pageOne;
const two = sheet.pageTwo;

function withComparison(change: Partial<Comparison>): SheetInput {
  return { ...orificeInput, comparison: { ...orificeInput.comparison, ...change } };
}

function choiceOf(id: string): Comparison['choices'][number] {
  const choice = orificeInput.comparison.choices.find((c) => c.id === id);
  if (choice === undefined) throw new Error(`no choice ${id}`);
  return choice;
}

describe('page one', () => {
  test('wiring: says that it is an estimate, and whose house, unit, day, people and version', () => {
    expect(one.heading).toBe('Estimate: leave, repair or replace your heat pump');
    expect(one.invented).toMatch(/^Invented example/);
    const facts = one.facts.map((fact) => fact.text).join(' | ');
    for (const part of [
      'M. Tarrow',
      '12 Sedge Lane',
      'made 2008',
      'R-22',
      'November 18, 2026',
      'Dana Quill',
      '1.0.0',
    ]) {
      expect(facts).toContain(part);
    }
  });

  test('wiring: what was found, with how sure, and that the cause is the technician\u2019s', () => {
    const text = one.finding.sentences.join(' ');
    expect(text).toContain(
      'about 64\u00a0% of the heat a healthy one gives (between 54\u00a0% and 76\u00a0%).',
    );
    expect(text).toContain('For cooling it is about 70\u00a0% (between 55\u00a0% and 85\u00a0%).');
    expect(text).toContain('Our technician thinks the cause is a partly blocked metering part');
    expect(text).toContain('it is not proven');
    expect(text).toContain('about 60 hours a year');
    expect(one.finding.dangers).toEqual([expect.stringMatching(/^Safety: the compressor/)]);
  });

  test('wiring: the running cost and the part due to the loss, as the bar draws them', () => {
    expect(one.runningCost.sentences).toEqual([
      'Running it costs about $2,000 a year (between $1,500 and $2,600).',
      'Of that, about $600 a year is due to the loss (between $300 and $1,000).',
    ]);
    expect(one.runningCost.bar.total).toEqual({ low: 1500, likely: 2000, high: 2600 });
    expect(one.runningCost.bar.faultUsd).toBe(600);
    expect(one.runningCost.bar.axis.max).toBeGreaterThanOrEqual(2600);
  });

  test('wiring: leaving it comes first, the order is the comparison\u2019s, no cell is blank', () => {
    expect(one.choices.columns.map((column) => column.id)).toEqual(
      orificeInput.comparison.choices.map((c) => c.id),
    );
    expect(one.choices.columns[0]?.kind).toBe('leave');
    const cells = one.choices.rows.flatMap((row) => row.cells);
    expect(cells.length).toBe(6 * 4);
    expect(cells.filter((cell) => cell.main.trim() === '')).toEqual([]);
  });

  test('wiring: every estimate in the table has a range beside it', () => {
    const rows = one.choices.rows.filter((row) => ['runningCost', 'breakdown', 'total'].includes(row.id));
    expect(rows.length).toBe(3);
    const ranges = rows.flatMap((row) => row.cells.map((cell) => cell.details[0] ?? ''));
    expect(ranges.length).toBe(12);
    expect(ranges.filter((range) => !/ to /.test(range))).toEqual([]);
  });

  test('wiring: one denominator for all chances of the row', () => {
    const row = one.choices.rows.find((r) => r.id === 'breakdown');
    expect(row?.cells.map((cell) => cell.main)).toEqual(['60 in 100', '50 in 100', '5 in 100', '5 in 100']);
  });

  test('wiring: prices and payments are quoted to the cent, a payment with term, total and rate', () => {
    const [payNow, payMonthly] = one.choices.rows;
    expect(payNow?.cells.map((cell) => cell.main)).toEqual(['none', '$1,379.23', '$1,000.00', '$14,950.00']);
    expect(payMonthly?.cells[2]).toEqual({
      main: '$137.52',
      details: ['for 84 months', '$12,552.02 in all', 'APR 8.99\u00a0%'],
    });
  });

  test('wiring: bars of the totals carry the table\u2019s own numbers', () => {
    const row = one.choices.rows.find((r) => r.id === 'total');
    expect(one.totals.bars.map((bar) => bar.label)).toEqual(row?.cells.map((cell) => cell.main));
    const highest = Math.max(...one.totals.bars.map((bar) => bar.total?.high ?? 0));
    expect(one.totals.axis.max).toBeGreaterThanOrEqual(highest);
    expect(one.totals.axis.ticks[0]?.at).toBe(0);
  });

  test('wiring: choices that cost about the same are said to, and none is recommended', () => {
    expect(one.advice.kind).toBe('aboutTheSame');
    expect(one.advice.sentences).toEqual([
      'These cost about the same: \u201cClean the orifice, new filter-drier\u201d and \u201cNew single-speed heat pump\u201d.',
      'On the likely numbers, \u201cClean the orifice, new filter-drier\u201d is lowest, but the ranges overlap.',
      'See to the safety notes above first, whatever you choose.',
    ]);
    expect(one.choices.columns.filter((column) => column.mark !== undefined)).toEqual([]);
    expect(one.advice.wouldChange).toEqual([
      'If you stay 10 years or more, \u201cNew single-speed heat pump\u201d costs least.',
    ]);
  });

  test('wiring: a recommendation is marked in its place and gives its reason as a range', () => {
    const recommended = composeSheet(
      withComparison({
        aboutTheSameIds: [],
        recommendation: { choiceId: 'clean-orifice', reason: { code: 'choiceCostsLeast' }, wouldChange: [] },
      }),
    ).pageOne;
    expect(recommended.choices.columns.map((column) => column.mark)).toEqual([
      undefined,
      'We recommend this',
      undefined,
      undefined,
    ]);
    expect(recommended.advice.sentences).toEqual([
      'We recommend \u201cClean the orifice, new filter-drier\u201d.',
      'Over your 7 years it costs about $3,000 less (between $200 and $6,000) than \u201cLeave it as it is\u201d.',
      'See to the safety notes above first, whatever you choose.',
    ]);
  });

  test('wiring: when leaving it is cheapest, waiting says so first; with a danger it never says there is no hurry', () => {
    const input = withComparison({
      lowestTotalId: 'leave',
      aboutTheSameIds: [],
      recommendation: { choiceId: 'leave', reason: { code: 'leaveCostsLeast' }, wouldChange: [] },
    });
    const unsafe = composeSheet(input).pageOne;
    const safe = composeSheet({ ...input, findings: { ...input.findings, flags: [] } }).pageOne;
    expect(safe.waiting.sentences[0]).toBe(
      'Leaving it is the cheapest choice over your 7 years, so there is no need to hurry.',
    );
    expect(unsafe.waiting.sentences[0]).toBe(
      'Leaving it is the cheapest choice over your 7 years, but the safety notes above come first.',
    );
    const warning = 'See to the safety notes above first, whatever you choose.';
    expect(unsafe.advice.sentences.at(-1)).toBe(warning);
    expect(safe.advice.sentences).not.toContain(warning);
  });

  test('wiring: a danger of a run that a later run has put right is no danger now', () => {
    const [run] = orificeInput.findings.runs;
    const [asFound] = orificeInput.visit.runs;
    if (run === undefined || asFound === undefined) throw new Error('fixture lacks a run');
    const flags = orificeInput.findings.flags.map((flag) => ({ ...flag, runId: 'as-found' }));
    const later = { ...orificeInput.findings, flags, runs: [run, { ...run, runId: 'after' }] };
    const visit = { ...orificeInput.visit, runs: [asFound, { ...asFound, id: 'after', label: 'After' }] };
    const repaired = composeSheet({ ...orificeInput, visit, findings: later });
    expect(repaired.pageOne.finding.dangers).toEqual([]);
  });

  test('wiring: the unit as found is listed whole; a later run shows what was off, also where it is right now', () => {
    const [run] = orificeInput.findings.runs;
    const [asFound] = orificeInput.visit.runs;
    if (run === undefined || asFound === undefined) throw new Error('fixture lacks a run');
    const right = run.targets.map((target) => ({ ...target, verdict: 'within' as const }));
    const findings = { ...orificeInput.findings, runs: [run, { ...run, runId: 'after', targets: right }] };
    const visit = { ...orificeInput.visit, runs: [asFound, { ...asFound, id: 'after', label: 'After' }] };
    const [first, later] = composeSheet({ ...orificeInput, visit, findings }).pageTwo.readings.tables;
    const off = first?.rows.filter((row) => row.off).map((row) => row.name);
    expect(first?.rows.length).toBe(8);
    expect(off?.length).toBe(6);
    expect(later?.rows.map((row) => row.name)).toEqual(off);
    expect(later?.rows.every((row) => !row.off)).toBe(true);
    expect(later?.rest).toBe('2 more readings were normal or have no target.');
  });
});

describe('choices that cost about the same', () => {
  const alike = (ids: readonly string[], lowestTotalId: string, safe: boolean) =>
    composeSheet({
      ...orificeInput,
      ...(safe ? { findings: { ...orificeInput.findings, flags: [] } } : {}),
      comparison: {
        ...orificeInput.comparison,
        lowestTotalId,
        aboutTheSameIds: ids,
        recommendation: {
          reason: { code: 'aboutTheSame', values: { choices: '', years: 7 } },
          lowestOnLikely: { code: 'lowestOnLikely', values: { choice: lowestTotalId } },
          wouldChange: [{ code: 'anyStay', values: { years: 7, choice: 'leave' } }],
        },
      },
    }).pageOne.advice;
  const fault =
    'Leaving it as it is means leaving the safety fault: have it put right first; its cost is not in these totals.';

  test('wiring: without a danger leaving it is an equal, the lowest is named as likely only, nothing is settled', () => {
    expect(alike(['clean-orifice'], 'leave', true)).toMatchObject({
      sentences: [
        'These cost about the same: \u201cLeave it as it is\u201d and \u201cClean the orifice, new filter-drier\u201d.',
        'On the likely numbers, \u201cLeave it as it is\u201d is lowest, but the ranges overlap.',
        'Choose by comfort, noise and risk.',
      ],
      wouldChange: [],
    });
  });

  test('wiring: with a danger leaving it is no equal, and nobody is told to choose by comfort', () => {
    const two = alike(['clean-orifice'], 'leave', false).sentences;
    expect(two[0]).toBe(
      'On money alone \u201cClean the orifice, new filter-drier\u201d costs about the same as leaving it as it is.',
    );
    const three = alike(['clean-orifice', 'replace-single'], 'leave', false).sentences;
    expect(three[0]).toBe(
      'These cost about the same: \u201cClean the orifice, new filter-drier\u201d and \u201cNew single-speed heat pump\u201d.',
    );
    expect([two, three].map((sentences) => sentences.includes(fault))).toEqual([true, true]);
    expect([...two, ...three].filter((sentence) => sentence.includes('Choose by'))).toEqual([]);
  });

  test('wiring: leaving it recommended with a danger says that the fault stays', () => {
    const recommended = composeSheet(
      withComparison({
        lowestTotalId: 'leave',
        aboutTheSameIds: [],
        recommendation: { choiceId: 'leave', reason: { code: 'leaveCostsLeast' }, wouldChange: [] },
      }),
    ).pageOne.advice.sentences;
    expect(recommended).toContain(fault);
  });
});

describe('readings that contradict each other', () => {
  const conflict = (code: string, readings: readonly string[], values = {}) =>
    ({ code, severity: 'conflict', runId: 'as-found', readings, values }) as const;
  const pressures = conflict('dischargeNotAboveSuction', ['dischargePsig', 'suctionPsig'], {
    high: 40,
    suction: 41,
  });
  const withFlags = (...more: (typeof pressures)[]) =>
    composeSheet({
      ...orificeInput,
      findings: { ...orificeInput.findings, flags: [...orificeInput.findings.flags, ...more] },
    });

  test('wiring: page one names them in words, and they come first among the doubts', () => {
    const crossed = withFlags(pressures);
    expect(crossed.pageOne.finding.conflict).toBe(
      'Two readings contradict each other, so the ranges here are wider: discharge pressure and suction pressure. They should be taken again.',
    );
    expect(crossed.pageTwo.doubts.sentences[0]).toMatch(
      /^Discharge pressure \(40 psig\) and suction pressure \(41 psig\) cannot both be true: a running/,
    );
    expect(one.finding.conflict).toBeUndefined();
  });

  test('wiring: several contradictions make one line with each reading once', () => {
    const wet = conflict('wetBulbAboveDryBulb', ['returnWetBulbF', 'returnAirF'], {
      wetBulb: 80,
      dryBulb: 70,
    });
    expect(withFlags(pressures, pressures, wet).pageOne.finding.conflict).toBe(
      'Some readings contradict each other, so the ranges here are wider: discharge pressure, suction pressure, return wet bulb, and return air. They should be taken again.',
    );
  });

  test('wiring: for every number of doubts left out there are words', () => {
    const { sentences, omitted } = withFlags(pressures).pageTwo.doubts;
    expect(omitted.length).toBe(sentences.length + 1);
    expect(omitted[1]).toBe('1 more in the full record of this visit.');
    expect(omitted.at(-1)).toBe(`${sentences.length} in the full record of this visit.`);
  });
});

describe('choices that cannot be counted', () => {
  test('wiring: are named with the reason', () => {
    const leftOut = [
      { name: 'New 3.5-ton air conditioner', why: 'loan term must be between 1 and 240 months' },
      { name: 'Choice 4', why: 'price must be between $0 and $100,000' },
    ];
    expect(composeSheet({ ...orificeInput, leftOut }).pageOne.leftOut).toBe(
      'Not counted: New 3.5-ton air conditioner (loan term must be between 1 and 240 months); Choice 4 (price must be between $0 and $100,000).',
    );
    expect(composeSheet({ ...orificeInput, leftOut: [] }).pageOne.leftOut).toBeUndefined();
    expect(one.leftOut).toBeUndefined();
  });
});

describe('an air conditioner', () => {
  const { heating: _heating, ...cooling } = orificeInput.findings.loss;
  const only = composeSheet({
    ...orificeInput,
    visit: {
      ...orificeInput.visit,
      unit: { ...orificeInput.visit.unit, kind: 'airConditioner' },
      observations: [{ id: 'neverKeepsUp' }],
    },
    findings: {
      ...orificeInput.findings,
      loss: { cooling: { ...cooling.cooling, basis: 'measured' } as NonNullable<typeof cooling.cooling> },
    },
  });

  test('wiring: cools only, in every sentence', () => {
    const texts = allTexts([only.pageOne, { ...only.pageTwo, readings: only.pageTwo.readings.seen }]);
    const own = texts.filter((text) => !orificeInput.comparison.choices.some((c) => text.includes(c.name)));
    expect(own.length).toBeGreaterThan(50);
    expect(own.filter((text) => /\bwarm or cool\b|heating and cooling/.test(text))).toEqual([]);
    expect(only.pageOne.finding.sentences).toContain(
      'In about 60 hours a year it cannot keep the house as cool as you set it.',
    );
    expect(only.pageOne.runningCost.basis).toMatch(/^Electricity for cooling only,/);
    expect(only.pageTwo.readings.seen).toContain('the house never gets cool enough');
  });
});

describe('what is not known', () => {
  const bare = composeSheet({
    ...orificeInput,
    visit: {
      schemaVersion: 1,
      id: 'bare',
      visitDate: '2026-03-01',
      site: {},
      unit: { kind: 'airConditioner', nominalTons: 1 },
      runs: [],
      observations: [],
      assumptions: [],
      choices: [],
    },
    findings: { runs: [], flags: [], loss: {}, wouldNarrow: [] },
    energy: { ...orificeInput.energy, scenarios: [] },
    comparison: {
      ...orificeInput.comparison,
      stayYears: 1,
      choices: [{ ...choiceOf('leave'), drivers: [] }],
      lowestTotalId: 'leave',
      aboutTheSameIds: [],
      recommendation: { reason: { code: 'nothingToCompare' }, wouldChange: [] },
    },
    assumptions: [],
  });

  test('wiring: says not given and not known in words, never blank', () => {
    const facts = bare.pageOne.facts.map((fact) => fact.text);
    expect(facts[0]).toBe('not given');
    expect(facts[1]).toBe('air conditioner, 1 ton, year not known, refrigerant not known');
    expect(facts[2]).toBe('March 1, 2026; who measured is not given');
    expect(bare.pageOne.finding.sentences[0]).toMatch(/not enough to say how much cooling/);
    expect(bare.pageOne.runningCost.sentences[1]).toMatch(/is not known/);
    expect(bare.pageOne.waiting.sentences).toEqual([
      'There is no other choice on this sheet to compare waiting with.',
    ]);
    expect(bare.pageOne.advice.sentences[0]).toMatch(/only one choice/);
    expect(bare.pageTwo.readings.none).toBe('No readings were taken.');
    expect(bare.pageTwo.financing.none).toBe('No financing is quoted on this sheet.');
    expect(bare.pageTwo.assumptions.introduction).toBe('Nothing was assumed.');
  });

  test('wiring: a stay nobody asked about is marked as assumed, in the singular too', () => {
    const row = bare.pageOne.choices.rows.find((r) => r.id === 'total');
    expect(row?.label).toBe('Total over 1 year (assumed), in today\u2019s money');
  });

  test('wiring: a choice without a price is shown without one', () => {
    const unpriced = composeSheet(
      withComparison({
        choices: [choiceOf('leave'), { ...choiceOf('clean-orifice'), priced: false, priceUsd: '0.00' }],
      }),
    );
    const [payNow, , , , total] = unpriced.pageOne.choices.rows;
    expect(payNow?.cells[1]?.main).toBe('not known');
    expect(total?.cells[1]?.main).toBe('not known');
    expect(total?.cells[1]?.details).toEqual([expect.stringMatching(/^about \$.* without its price$/)]);
    const bar = unpriced.pageOne.totals.bars[1];
    expect(bar?.label).toBe('not known');
    expect(bar?.total).toBeUndefined();
  });
});

describe('losses that are none, certain or doubtful', () => {
  const loss = orificeInput.findings.loss.heating;
  if (loss === undefined) throw new Error('fixture lacks a loss');
  const withRatio = (capacity: [number, number, number], power: [number, number, number]) =>
    composeSheet({
      ...orificeInput,
      findings: {
        ...orificeInput.findings,
        loss: {
          heating: {
            ...loss,
            capacityRatioToHealthy: estimate(...capacity),
            powerRatioToHealthy: estimate(...power),
          },
        },
      },
    }).pageOne.finding.sentences[0];

  test('wiring: a range that reaches a healthy unit is no clear loss', () => {
    expect(withRatio([0.9, 0.97, 1.02], [0.95, 1, 1.05])).toMatch(
      /^We found no clear loss: .* about 98\u00a0% of the heat/,
    );
  });

  test('wiring: more power at full output is a loss all the same, told in one sentence', () => {
    expect(withRatio([0.9, 0.97, 1.02], [1.1, 1.2, 1.3])).toBe(
      'It gives full heat (about 98\u00a0%, between 90\u00a0% and 102\u00a0%) but draws about 20\u00a0% more power for it (between 10\u00a0% and 30\u00a0% more).',
    );
  });

  test('wiring: more power at less than full output is a loss of output and of power, never full output', () => {
    expect(withRatio([0.82, 0.92, 1.02], [1.12, 1.24, 1.36])).toMatch(
      /^The unit now gives about 92\u00a0% of the heat/,
    );
  });

  test('wiring: a likely loss whose range reaches a healthy unit is unsure, not "no clear loss"', () => {
    expect(withRatio([0.6, 0.8, 1.05], [0.9, 1, 1.1])).toMatch(
      /^It is not sure that it has lost any heat: it gives about 80\u00a0% of what a healthy one gives/,
    );
  });

  test('wiring: a mode without a clear loss beside one with a loss does not deny the loss', () => {
    const cooling = { ...loss, mode: 'cooling' as const, capacityRatioToHealthy: estimate(0.9, 0.97, 1.02) };
    const whole = { ...cooling, powerRatioToHealthy: estimate(0.95, 1, 1.05) };
    const found = composeSheet({
      ...orificeInput,
      findings: { ...orificeInput.findings, loss: { heating: loss, cooling: whole } },
    }).pageOne.finding.sentences;
    expect(found).toContain(
      'For cooling we found no clear loss: about 98\u00a0% (between 90\u00a0% and 102\u00a0%).',
    );
    expect(found.filter((sentence) => sentence.startsWith('We found no clear loss'))).toEqual([]);
  });

  const assumedFinding = (routes: (typeof loss)['routes']) =>
    composeSheet({
      ...orificeInput,
      findings: {
        ...orificeInput.findings,
        loss: {
          heating: { ...loss, basis: 'assumed', routes, capacityRatioToHealthy: estimate(0.9, 0.95, 1.02) },
        },
      },
    }).pageOne;

  test('wiring: a loss that nothing measured is said to be assumed, by age or by the likely cause', () => {
    const byAge = assumedFinding([{ id: 'agePrior' }]);
    const text = byAge.finding.sentences.join(' ');
    expect(text).toMatch(
      /^What was read does not tell the loss\. Going by age alone we assume that it gives about 96\u00a0% of the heat/,
    );
    expect(text).not.toMatch(/We found no clear loss|The unit now gives|hours a year/);
    expect(byAge.runningCost.sentences[1]).toMatch(/ may be due to the loss /);
    expect(assumedFinding([{ id: 'faultCorrelation' }]).finding.sentences[0]).toContain(
      'Going by age and the likely cause we assume',
    );
  });

  test('wiring: costs of a loss that may be none are told as such', () => {
    const flat = orificeInput.energy.scenarios.map((s) =>
      s.id === 'asFound' ? { ...s, mild: s.mild, likely: s.likely } : s,
    );
    const healthy = flat.find((s) => s.id === 'healthy');
    if (healthy === undefined) throw new Error('fixture lacks a scenario');
    const same = composeSheet({
      ...orificeInput,
      energy: {
        ...orificeInput.energy,
        scenarios: flat.map((s) => (s.id === 'asFound' ? { ...healthy, id: 'asFound' } : s)),
      },
    }).pageOne.runningCost;
    expect(same.sentences[1]).toBe('We see no extra cost from a loss.');
    expect(same.bar.faultUsd).toBeUndefined();
    expect(same.bar.restWords).toBe('this unit now');
  });
});

describe('what the readings make of the cause', () => {
  const cause = (name: CauseId, probability: number): CauseFinding => ({
    cause: name,
    probability,
    standing: 'likely',
    severity: { word: 'moderate', level: 0.2 },
    speaksFor: [],
    speaksAgainst: [],
    confusedWith: [],
    hints: [],
  });
  const saidWith = (found: Partial<CausesFound>, suspected?: CauseId) => {
    const { suspectedCause: _suspected, ...findings } = orificeInput.findings;
    const causes: CausesFound = {
      verdict: 'found',
      noFaultProbability: 0.01,
      causes: [cause('meteringRestriction', 0.87), cause('lowCharge', 0.3)],
      nextReadings: [],
      byRun: [],
      resolved: [],
      comparisons: [],
      notes: [],
      ...found,
    };
    const named =
      suspected === undefined ? {} : { suspectedCause: { cause: suspected, saidBy: 'technician' as const } };
    return composeSheet({
      ...orificeInput,
      findings: { ...findings, ...named, causes },
    }).pageOne.finding.sentences.join(' ');
  };

  test('wiring: they agree with the technician, point elsewhere, or to a cause nobody named', () => {
    expect(saidWith({}, 'meteringRestriction')).toContain('The readings agree: 9 in 10.');
    expect(saidWith({}, 'overcharge')).toContain('The readings point more to a partly blocked metering part');
    expect(saidWith({})).toContain('The readings point to a partly blocked metering part');
  });

  test('wiring: no fault, no verdict, too few readings', () => {
    expect(saidWith({ verdict: 'noFaultFound', noFaultProbability: 0.83, causes: [] }, 'none')).toContain(
      'Our technician found no fault. The readings show no fault: 8 in 10.',
    );
    expect(saidWith({ verdict: 'unclear' }, 'lowCharge')).toContain('The readings do not settle the cause.');
    expect(saidWith({ verdict: 'tooFewReadings', causes: [] })).toContain(
      'The readings are too few to tell a cause.',
    );
  });

  test('wiring: a cause that the last run no longer shows is said to be gone', () => {
    const resolved = [{ cause: 'meteringRestriction' as const, fromRunId: 'a', toRunId: 'b' }];
    expect(saidWith({ resolved }, 'meteringRestriction')).toContain('The last readings no longer show it.');
  });
});

describe('page two', () => {
  test('wiring: readings stand beside targets with a verdict in words', () => {
    const [table] = two.readings.tables;
    expect(table?.title).toBe('As found (heating)');
    expect(table?.rows[2]).toEqual({
      name: 'Suction pressure',
      found: '41 psig',
      target: '52 to 60',
      verdict: 'too low',
      normal: false,
      off: true,
      basis: 'measured',
      basisWords: 'measured',
    });
    expect(table?.also).toContain('outdoor air 38 \u00b0F');
    expect(table?.normal).toContain('airflow per ton 377 cfm/ton (350 to 450)');
  });

  test('wiring: counts of the four marks', () => {
    expect(two.counts.items.map((item) => item.words)).toEqual([
      '14 measured',
      '8 from the nameplate',
      '1 from the bill',
      '20 assumed',
    ]);
  });

  test('wiring: what moves the result most comes first and says by how much; all have a source', () => {
    expect(two.assumptions.introduction).toMatch(
      /^What moves the result most is how large the loss is: by about \$4,200\./,
    );
    expect(two.assumptions.rows[0]?.name).toBe(
      'What the customer\u2019s money earns or costs elsewhere (nominal)'.replace('\u2019', "'"),
    );
    expect(two.assumptions.rows[0]?.effect).toBe('moves the result by about $800');
    expect(two.assumptions.rows.length).toBe(20);
    expect(two.assumptions.rows.filter((row) => row.source.trim() === '')).toEqual([]);
    expect(two.assumptions.omitted[17]).toBe('17 more are there too.');
  });

  test('wiring: a quoted payment brings its whole disclosure', () => {
    const [plan] = two.financing.plans;
    expect(two.financing.title).toContain('estimate, not an offer of credit');
    expect(plan?.apr).toBe('8.99\u00a0%');
    expect(plan?.rows.map((row) => `${row.label}: ${row.text}`)).toEqual([
      'Finance charge: $3,002.02',
      'Amount financed: $8,550.00',
      'Total of payments: $11,552.02',
      'Monthly payments: 83 \u00d7 $137.52, then $137.86',
      'Down payment: $1,000.00',
      'Cash price: $9,550.00',
      'Total you pay: $12,552.02',
      'Lender or plan: Plan A',
    ]);
  });

  test('wiring: cautions follow the refrigerant and the house', () => {
    const text = (input: SheetInput) => composeSheet(input).pageTwo.cautions.sentences.join(' ');
    const withUnit = (refrigerant: 'R-22' | 'R-32' | 'R-454B', otherHeat: boolean): SheetInput => ({
      ...orificeInput,
      visit: {
        ...orificeInput.visit,
        unit: { ...orificeInput.visit.unit, refrigerant },
        site: { ...orificeInput.visit.site, otherHeat },
      },
    });
    expect(text(withUnit('R-32', false))).toContain('R-32 can burn');
    expect(text(withUnit('R-454B', false))).toContain('R-454B can burn');
    expect(text(withUnit('R-22', false))).not.toContain('R-22 can burn');
    expect(text(withUnit('R-22', false))).toContain('Many new units use a refrigerant that can burn');
    expect(text(withUnit('R-22', true))).toContain('carbon monoxide');
    expect(text(withUnit('R-22', false))).not.toContain('carbon monoxide');
    for (const always of ['licensed technician', 'High voltage', 'High pressure', 'permit']) {
      expect(text(withUnit('R-22', false))).toContain(always);
    }
  });

  test('wiring: prices that lack a permit or tax are named', () => {
    expect(two.excluded.sentences).toContain('No permit is priced for: Clean the orifice, new filter-drier.');
    expect(two.excluded.sentences).toContain(
      'No tax line is in the price of: New single-speed heat pump and New variable-speed heat pump.',
    );
  });

  test('wiring: the choice to sign offers all choices and ticks none', () => {
    expect(two.signature.choices.length).toBe(4);
    expect(two.signature.told).toMatch(/ranges/);
  });
});

describe('small print', () => {
  test('wiring: what counts as a breakdown stands on its row and below the table', () => {
    const row = one.choices.rows.find((r) => r.id === 'breakdown');
    expect(row?.label).toBe('Chance that the unit breaks down for good in your 7 years');
    expect(one.explanations).toContain(
      'Breaks down for good means a failure that ends the unit\u2019s life, not a small repair.',
    );
  });

  test('wiring: nothing is said of further readings when none would help', () => {
    expect(two.surer.sentences).toEqual([]);
  });
});

describe('more choices than fit', () => {
  const crowded = composeSheet(crowdedInput);

  test('wiring: at most five stand side by side, leaving it and the cheapest among them; the rest on page two', () => {
    const shown = crowded.pageOne.choices.columns.map((column) => column.id);
    expect(shown.length).toBe(5);
    expect(shown[0]).toBe('leave-0');
    expect(shown).toContain('clean-orifice-1');
    expect(crowded.pageTwo.moreChoices?.columns.length).toBe(2);
    expect(crowded.pageOne.moreChoices).toMatch(/^2 more choices are on page two/);
  });

  test('wiring: three loans bring three plans', () => {
    expect(crowded.pageTwo.financing.plans.length).toBe(3);
  });
});

describe('language', () => {
  const banned = /\b(please|sorry|simply|guaranteed|up to|urgent|limited|invalid|obsolete)\b/i;
  const jargon = /\b(psig|psia|superheat|subcooling|SEER2?|HSPF2?|NPV|kWh|Btu\/h|cfm)\b/;
  const own = allTexts(one).filter(
    (text) => !orificeInput.comparison.choices.some((c) => text.includes(c.name)),
  );

  test('identity: page one uses no word of the banned list and no jargon', () => {
    expect(own.length).toBeGreaterThan(50);
    expect(own.filter((text) => banned.test(text) || jargon.test(text))).toEqual([]);
  });

  test('identity: no sentence of page one has more than 25 words', () => {
    const sentences = own.flatMap((text) => text.split(/(?<=[.:]) /));
    // The list of what totals count is one sentence by nature: it is the only one let through.
    const long = sentences.filter((s) => s.split(/\s+/).length > 25 && !s.startsWith('price, permit, tax'));
    expect(long).toEqual([]);
  });

  test('identity: no letter grade, star or traffic light stands on the sheet', () => {
    expect(
      allTexts(sheet).filter((text) =>
        /[\u2605\u2606\u2b50]|\bgrade [A-F]\b|\b(red|amber|green) light\b/i.test(text),
      ),
    ).toEqual([]);
  });
});

describe('the sheet as data', () => {
  test('identity: survives JSON and is the same each time', () => {
    expect(JSON.parse(JSON.stringify(sheet))).toEqual(sheet);
    expect(composeSheet(orificeInput)).toEqual(sheet);
  });

  test('identity: no text holds an unfilled place, NaN or undefined', () => {
    const bad = allTexts({ ...sheet, pageOf: '' }).filter((text) =>
      /\{\w+\}|NaN|undefined|Infinity/.test(text),
    );
    expect(bad).toEqual([]);
  });
});
