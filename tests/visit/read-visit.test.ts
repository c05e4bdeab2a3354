import { describe, expect, it } from 'vitest';
import { readDraft, readVisit } from '@/lib/visit/read-visit';
import { bareVisit } from './visit-fixture';

function issuesOf(data: unknown) {
  const result = readVisit(data);
  return result.ok ? [] : result.issues;
}

function withRun(reading: Record<string, unknown>) {
  return { ...bareVisit(), runs: [{ id: 'r1', mode: 'heating', ...reading }] };
}

describe('a visit is read', () => {
  it('wiring: the least possible visit is accepted', () => {
    expect(readVisit(bareVisit())).toEqual({ ok: true, value: bareVisit() });
  });

  it.each([
    ['suctionPsig', 0, true],
    ['suctionPsig', 300, true],
    ['suctionPsig', 300.1, false],
    ['suctionPsig', -0.1, false],
    ['dischargePsig', 700, true],
    ['dischargePsig', 3000, false],
    ['suctionLineF', 400, false],
    ['suctionLineF', -40, true],
    ['suctionLineF', -40.5, false],
  ])('property: %s = %d is accepted: %s', (name, value, accepted) => {
    expect(readVisit(withRun({ [name]: value })).ok).toBe(accepted);
  });
});

describe('bad input is named with field, value, limit and remedy', () => {
  it('wiring: a pressure of 3,000 psig', () => {
    expect(issuesOf(withRun({ dischargePsig: 3000 }))).toEqual([
      {
        code: 'outOfRange',
        path: 'runs.0.dischargePsig',
        label: 'Discharge pressure',
        value: '3000',
        limit: 'between 0 and 700 psig',
        fix: expect.stringContaining('Check the reading and the unit, or leave the field empty'),
      },
    ]);
  });

  it('wiring: letters in a number', () => {
    const [issue] = issuesOf(withRun({ compressorA: 'twelve' }));
    expect(issue).toMatchObject({ code: 'notNumber', label: 'Compressor amps', value: 'twelve' });
    expect(issue?.fix).toContain('Compressor amps must be a number between 0.5 and 80 A');
  });

  it('wiring: what is no reading is never called one, nor left empty as not measured', () => {
    const financing = { kind: 'levelLoan', rateFracPerYear: 8, termMonths: 999 };
    const line = { kind: 'part', label: 'x', amount: 1, unitPriceUsd: -1 };
    const tax = { kind: 'tax', label: 'Tax', taxFrac: 7.5 };
    const choice = {
      kind: 'replace',
      id: 'new',
      name: 'New',
      unitKind: 'heatPump',
      tier: 'singleSpeed',
      nominalTons: 3,
      ratings: {},
      priceLines: [line, tax],
      financing,
    };
    const issues = issuesOf({
      ...bareVisit(),
      site: { stayYears: 90 },
      unit: { kind: 'heatPump', nominalTons: 30, manufactureYear: 1066 },
      tariff: { kind: 'flat', energyUsdPerKwh: 16 },
      choices: [choice],
    });
    expect(issues).toHaveLength(8);
    expect(issues.filter((i) => !i.fix.endsWith('. Check the number and its unit.'))).toEqual([]);
    expect(issues.filter((i) => /\s[.,]|\s\s|\s$/.test(`${i.fix} ${i.limit}`.trimEnd()))).toEqual([]);
  });

  it('wiring: a name of 300 characters is not repeated whole', () => {
    const [issue] = issuesOf({ ...bareVisit(), technician: 'n'.repeat(300) });
    expect(issue).toMatchObject({ code: 'outOfRange', label: 'Technician', value: `${'n'.repeat(59)}…` });
    expect(issue?.fix).toBe('Technician is too long: shorten it to 80 characters.');
  });

  it('wiring: an empty form lists what is indispensable', () => {
    const paths = issuesOf({ schemaVersion: 1, unit: {} }).map((i) => i.path);
    expect(paths).toEqual(expect.arrayContaining(['visitDate', 'unit.kind', 'unit.nominalTons']));
  });

  it('wiring: nothing at all, a list, a text', () => {
    const files = [undefined, null, [], 'visit', 7];
    expect(files.flatMap(issuesOf).map((i) => [i.code, i.value, i.limit])).toEqual(
      [undefined, 'null', 'a list', 'visit', '7'].map((value) => [
        'notReadable',
        value,
        'one visit, as a JSON object { ... }',
      ]),
    );
  });

  it('wiring: a heating run on a cooling-only unit', () => {
    const visit = { ...withRun({}), unit: { kind: 'airConditioner', nominalTons: 3 } };
    expect(issuesOf(visit)).toMatchObject([{ code: 'conflict', path: 'runs.0', value: 'heating' }]);
  });

  it('wiring: a negative price and a loan of 0 months', () => {
    const choice = {
      kind: 'repair',
      id: 'clean',
      name: 'Clean the orifice',
      actions: ['meteringOrificeCleaning'],
      priceLines: [{ kind: 'part', label: 'Orifice', amount: 1, unitPriceUsd: -30 }],
      financing: { kind: 'levelLoan', rateFracPerYear: 0.08, termMonths: 0 },
    };
    const issues = issuesOf({ ...bareVisit(), choices: [choice] });
    expect(issues.map((i) => [i.label, i.value, i.limit])).toEqual([
      ['Price each', '-30', 'between 0 and 100000 dollars'],
      ['Loan term', '0', 'between 1 and 240 months'],
    ]);
  });

  it.each([2, 99, '1', undefined, null])('wiring: a file of version %s', (schemaVersion) => {
    expect(issuesOf({ ...bareVisit(), schemaVersion })).toMatchObject([
      { code: 'wrongVersion', limit: 'version 1' },
    ]);
  });

  it('wiring: a misspelt field is named, not ignored', () => {
    expect(issuesOf(withRun({ suctionPsi: 60 }))).toMatchObject([
      { code: 'unknownField', path: 'runs.0.suctionPsi', value: '60' },
    ]);
    const [long] = issuesOf({ ...bareVisit(), ['x'.repeat(300)]: { a: 1 } });
    expect(long?.label).toHaveLength(60);
    expect(long?.value).toBe('a group of fields');
    expect(long?.fix.length).toBeLessThan(130);
  });

  it('wiring: a unit made after the visit', () => {
    const visit = bareVisit({ unit: { kind: 'heatPump', nominalTons: 3, manufactureYear: 2030 } });
    expect(issuesOf(visit)).toMatchObject([
      { code: 'conflict', path: 'unit.manufactureYear', value: '2030' },
    ]);
  });

  it('wiring: two runs or two choices of one name', () => {
    const run = { id: 'r', mode: 'heating' as const };
    expect(issuesOf(bareVisit({ runs: [run, run] }))).toMatchObject([{ code: 'conflict', path: 'runs.1' }]);
  });

  it('wiring: a third decimal of a price', () => {
    const leave = {
      kind: 'leave',
      id: 'leave',
      name: 'Leave',
      priceLines: [{ kind: 'other', label: 'x', amount: 1, unitPriceUsd: 1.005 }],
    };
    expect(issuesOf({ ...bareVisit(), choices: [leave] })).toMatchObject([
      { limit: 'dollars and whole cents' },
    ]);
  });
});

describe('a draft keeps what can be used', () => {
  it('wiring: one bad reading costs only itself', () => {
    const { visit, issues } = readDraft(withRun({ suctionPsig: 3000, dischargePsig: 214 }));
    expect(issues.map((i) => i.path)).toEqual(['runs.0.suctionPsig']);
    expect(visit?.runs[0]).toEqual({ id: 'r1', mode: 'heating', dischargePsig: 214 });
  });

  it('wiring: a choice with a broken price is left out whole, never made cheaper', () => {
    const line = (unitPriceUsd: unknown) => ({ kind: 'part', label: 'x', amount: 1, unitPriceUsd });
    const repair = {
      kind: 'repair',
      id: 'a',
      name: 'A',
      actions: ['blowerService'],
      priceLines: [line(100), line('abc')],
    };
    const { visit, issues } = readDraft({
      ...bareVisit(),
      choices: [{ kind: 'leave', id: 'leave', name: 'Leave', priceLines: [] }, repair],
    });
    expect(visit?.choices.map((c) => c.id)).toEqual(['leave']);
    expect(issues).toHaveLength(1);
  });

  it('wiring: without the size there is no visit yet, and it says so', () => {
    const { visit, issues } = readDraft({ ...bareVisit(), unit: { kind: 'heatPump' } });
    expect(visit).toBeUndefined();
    expect(issues).toMatchObject([{ code: 'missing', label: 'Nominal size' }]);
  });

  it('wiring: a wrong run leaves the other runs', () => {
    const runs = [
      { id: 'a', mode: 'cooling' },
      { id: 'b', mode: 'heating' },
    ];
    const { visit } = readDraft({ ...bareVisit(), unit: { kind: 'airConditioner', nominalTons: 3 }, runs });
    expect(visit?.runs.map((r) => r.id)).toEqual(['a']);
  });
});

describe('bills, tariffs and own bins half typed', () => {
  const draft = (change: Record<string, unknown>) => readDraft({ ...bareVisit(), ...change });
  const months = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];

  it('wiring: a bill without its kWh or with a broken date goes alone; a bad cost leaves its bill', () => {
    const good = { fromDate: '2026-01-05', toDate: '2026-02-04', kwh: 1210, costUsd: 181.5 };
    const { visit, issues } = draft({
      bills: [
        good,
        { fromDate: '2026-02-04', toDate: '2026-03-05' },
        { ...good, fromDate: '5 March' },
        { ...good, kwh: 'abc' },
        { ...good, costUsd: 'abc' },
      ],
    });
    expect(visit?.bills).toEqual([good, { fromDate: '2026-01-05', toDate: '2026-02-04', kwh: 1210 }]);
    expect(issues.map((i) => i.path).sort()).toEqual([
      'bills.1.kwh',
      'bills.2.fromDate',
      'bills.3.kwh',
      'bills.4.costUsd',
    ]);
    expect(issues.find((i) => i.path === 'bills.1.kwh')?.fix).toBe(
      'Enter electricity on the bill, between 0 and 20000 kWh.',
    );
  });

  it('wiring: of a tariff only the row with the slip goes; without any row the tariff goes', () => {
    const season = { months: [1, 2], energyUsdPerKwh: 0.12 };
    const { visit, issues } = draft({
      tariff: { kind: 'seasonal', seasons: [season, { months: [3, 13], energyUsdPerKwh: 0.2 }] },
    });
    expect(visit?.tariff).toEqual({ kind: 'seasonal', seasons: [season] });
    expect(issues.map((i) => i.path)).toEqual(['tariff.seasons.1.months.1']);
    const none = draft({ tariff: { kind: 'seasonal', seasons: [{ months }] } });
    expect(none.visit).toBeDefined();
    expect(none.visit?.tariff).toBeUndefined();
    expect(none.issues[0]?.path).toBe('tariff.seasons.0.energyUsdPerKwh');
  });

  it('wiring: a tier and a period go alone too', () => {
    const tiers = [{ upToKwh: 500, energyUsdPerKwh: 0.1 }, { energyUsdPerKwh: 'abc' }];
    const tiered = draft({ tariff: { kind: 'tiered', seasons: [{ months, tiers }] } });
    expect(tiered.visit?.tariff).toEqual({ kind: 'tiered', seasons: [{ months, tiers: [tiers[0]] }] });
    const peak = { months, days: 'weekdays', fromHour: 16, toHour: 21, energyUsdPerKwh: 0.34 };
    const { visit, issues } = draft({
      tariff: { kind: 'timeOfUse', periods: [peak, { ...peak, fromHour: 25 }], otherUsdPerKwh: 0.12 },
    });
    expect(visit?.tariff).toEqual({ kind: 'timeOfUse', periods: [peak], otherUsdPerKwh: 0.12 });
    expect(issues.map((i) => i.fix)).toEqual([
      "Price begins at must be between 0 and 23 o'clock. Check the number and its unit.",
    ]);
  });

  it('wiring: own bins lose the row with the slip only', () => {
    const bin = { outdoorF: 32, yearHours: 2000 };
    const { visit, issues } = draft({
      site: { climate: { kind: 'own', bins: [bin, { outdoorF: 300, yearHours: 10 }] } },
    });
    expect(visit?.site.climate).toEqual({ kind: 'own', bins: [bin] });
    expect(issues.map((i) => i.label)).toEqual(['Middle of the temperature bin']);
  });

  it('wiring: a house built after the visit', () => {
    expect(issuesOf({ ...bareVisit(), site: { builtYear: 2099 } }).map((i) => i.path)).toEqual([
      'site.builtYear',
    ]);
  });
});
