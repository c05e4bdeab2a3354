import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, SIZES, watchedPage } from './browser';
import { box, breaches, openPart, pick, saved, startVisit, tooWide, type } from './visit-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** The rules look at every element of a long page; a busy machine takes its time. */
const PATIENCE_MS = 180_000;

async function startMeasuring(page: Page): Promise<string> {
  const id = await startVisit(page);
  await openPart(page, 'Unit and house');
  await pick(page, 'Kind of unit', 'Heat pump');
  await type(page, 'Nominal size', '3');
  await page.getByLabel('Refrigerant', { exact: true }).selectOption('R-410A');
  await openPart(page, 'Readings');
  await page.getByRole('button', { name: 'Take readings' }).click();
  return id;
}

/** Opens one of the ways of measuring by the words in its head. */
async function unfold(page: Page, title: string): Promise<void> {
  await page.locator('summary').filter({ hasText: title }).first().click();
}

test('wiring: traverse, static budget and checks, typed with one thumb, give their results at once', {
  timeout: PATIENCE_MS,
}, async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.phone });
  const id = await startMeasuring(page);

  await unfold(page, 'Airflow by the return grille');
  await type(page, 'Return grille width', '20');
  await type(page, 'Return grille height', '20');
  await type(page, 'Free-area factor of the grille', '0.70');
  await page.getByText('12 points are enough for this grille').waitFor();
  const velocities = ['480', '500', '520', '5oo', '500'];
  for (const [i, velocity] of velocities.entries()) {
    await box(page, `Velocity at point ${i + 1}`).fill(velocity);
    await page.keyboard.press('Enter');
  }
  // 500 fpm x 400 in2 x 0.70 / 144 = 972 cfm, over 3 tons 324
  await page.getByText('500 fpm × 400 sq in × 0.70 / 144').waitFor();
  const result = page.getByRole('status').filter({ hasText: 'cfm per ton' });
  expect(await result.innerText()).toMatch(
    /9[78]0 cfm, 3[23]0 cfm per ton[\s\S]*too low; healthy is 350 to 450/,
  );
  await page.getByText('4 of 12', { exact: true }).waitFor();

  // the slip stays, is named, and one tap puts it right
  await page.getByRole('button', { name: 'Change point 4: 5oo fpm' }).click();
  await page.locator('main p').filter({ hasText: '“5oo” is not one' }).first().waitFor();
  await box(page, 'Velocity at point 4').fill('500');
  await page.getByText('5 of 12', { exact: true }).waitFor();

  await unfold(page, 'Static pressure');
  await type(page, /^Return static/, '-0.40');
  await type(page, 'Filter pressure drop', '0.25');
  await type(page, 'Indoor coil pressure drop', '0.20');
  await type(page, /^Supply static/, '0.35');
  await page.getByText('Say where the coil lies').waitFor();
  await pick(page, 'Where the indoor coil lies', 'After the blower');
  await page.getByText('0.75 in. w.c. in total: more than the 0.7 in. w.c. accepted in the field.').waitFor();
  await page.getByText('Filter takes the most: 0.25 in. w.c., 33 % of the total.').waitFor();
  const rows = await page.getByRole('table', { name: 'Who uses the pressure' }).innerText();
  expect(rows).toMatch(
    /Return ducts and grille[\s\S]*0.15[\s\S]*Filter[\s\S]*0.25[\s\S]*Indoor coil[\s\S]*0.2[\s\S]*Supply ducts[\s\S]*0.15[\s\S]*0.75/,
  );

  await unfold(page, 'Run capacitors');
  await page.getByText('a capacitor holds its charge with the power off').waitFor();
  await type(page, 'Compressor run capacitor, label', '40');
  await type(page, 'Compressor run capacitor, measured', '35');
  await page.getByText('Weak: below the widest label class.').waitFor();

  expect(await breaches(page)).toEqual([]);
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  await saved(page);
  const record = await (await page.request.get(`/visits/${id}/appraisal.json`)).json();
  expect(record.visit.runs[0].grilleFacePointsFpm).toEqual([480, 500, 520, 500, 500]);
  expect(record.visit.unit.coilCountedIn).toBe('supplyStatic');

  await page.reload({ waitUntil: 'networkidle' });
  await unfold(page, 'Airflow by the return grille');
  expect(await page.getByRole('list', { name: 'Points so far' }).getByRole('button').count()).toBe(5);
  expect(trouble).toEqual([]);
  await page.context().close();
});

test('wiring: a charging table half typed is kept and says what it lacks; whole, it is the target of the run', {
  timeout: PATIENCE_MS,
}, async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.phone });
  await startMeasuring(page);
  await type(page, 'Suction pressure', '118');
  await type(page, 'Outdoor air', '105');
  await type(page, 'Return wet bulb', '67');

  await unfold(page, 'Charging table on the unit');
  await page.getByRole('button', { name: 'Type the cooling table' }).click();
  const header = (n: number) => page.getByRole('textbox', { name: `Outdoor temperature of row ${n}, °F` });
  await header(1).fill('95');
  await header(2).fill('85');
  await page.getByRole('textbox', { name: 'Indoor temperature of column 1, °F' }).fill('67');
  const cell = (outdoor: number) =>
    page.getByRole('textbox', { name: `Suction pressure at outdoor ${outdoor} °F, indoor 67 °F, psig` });
  await cell(95).fill('136');
  await page
    .getByText('still blank: 1 suction pressure. Type what is blank, or remove its row or column.')
    .waitFor();
  await saved(page);
  await page.reload({ waitUntil: 'networkidle' });
  await unfold(page, 'Charging table on the unit');
  expect(await cell(95).inputValue()).toBe('136');

  await cell(95).focus();
  await cell(85).fill('130');
  await page.getByText('In use: 2 outdoor by 1 indoor temperatures.').waitFor();
  // 10 F beyond the last step of 10 F: 136 + 6 = 142, 6 % either way
  const targets = page.getByRole('region', { name: 'By the unit’s own table' });
  expect(await targets.innerText()).toMatch(
    /142 psig \(133 to 151 psig\)[\s\S]*Reads 118 psig: too low[\s\S]*Beyond the table, 1 of its steps away/,
  );

  await page.getByRole('button', { name: 'Add a row' }).click();
  await header(4).fill('75');
  await page.getByText('still blank: 1 suction pressure').waitFor();
  await page.getByRole('button', { name: 'Remove row 4' }).click();
  await page.getByText('In use: 2 outdoor by 1 indoor temperatures.').waitFor();
  expect(await breaches(page)).toEqual([]);
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  expect(trouble).toEqual([]);
  await page.context().close();
});

test('wiring: two runs are compared, real changes told from noise, and changed weather is named', {
  timeout: PATIENCE_MS,
}, async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.phone });
  await startMeasuring(page);
  await pick(page, 'Mode', 'Heating');
  const found: readonly (readonly [string, string])[] = [
    ['Label of the run', 'as found'],
    ['Suction pressure', '88'],
    ['Discharge pressure', '400'],
    ['Outdoor air', '35'],
    ['Return air', '70'],
  ];
  for (const [label, typed] of found) await type(page, label, typed);
  await page.getByRole('button', { name: 'Copy “as found” and change what changed' }).click();
  await type(page, 'Label of the run', 'registers opened');
  await type(page, 'Discharge pressure', '330');
  await type(page, 'Suction pressure', '89');
  await type(page, 'Outdoor air', '42');

  await unfold(page, 'Compare two runs');
  await page.getByText('Outdoor air changed from 35 to 42 °F').waitFor();
  const table = await page.getByRole('table', { name: 'Readings and what follows' }).innerText();
  expect(table).toMatch(/Discharge pressure, psig\s+real[^\t]*\s+400\s+330\s+−70/);
  await unfold(page, 'more, not changed beyond the instruments');
  const others = await page.getByRole('table', { name: 'Not changed beyond' }).innerText();
  expect(others).toMatch(/Suction pressure, psig\s+within what the instruments leave open\s+88\s+89\s+\+1/);
  expect(await page.getByRole('combobox', { name: 'Before' }).inputValue()).toBe('run-1');
  expect(await page.getByRole('combobox', { name: 'After' }).inputValue()).toBe('run-2');
  expect(await breaches(page)).toEqual([]);
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  expect(trouble).toEqual([]);
  await page.context().close();
});
