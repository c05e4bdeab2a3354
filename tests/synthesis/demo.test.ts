import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { readVisit } from '@/lib/visit/read-visit';
import { asFile, demoVisits } from '../../scripts/synthesis/demo/demo-visits';

const folder = fileURLToPath(new URL('../../data-demo/', import.meta.url));
const visits = demoVisits();

describe('invented visits', () => {
  it('regression: data-demo holds exactly what the script computes', () => {
    const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
    expect(files.sort()).toEqual(visits.map((visit) => `${visit.id}.json`).sort());
    for (const visit of visits) {
      expect(readFileSync(`${folder}${visit.id}.json`, 'utf8')).toBe(asFile(visit));
    }
    expect.assertions(1 + visits.length);
  });

  it('wiring: every visit is marked invented and passes the reader', () => {
    expect(visits.length).toBeGreaterThanOrEqual(7);
    for (const visit of visits) {
      const reading = readVisit(JSON.parse(asFile(visit)));
      expect(reading.ok ? [] : reading.issues).toEqual([]);
      expect(visit.invented).toBe(true);
      expect(visit.note).toMatch(/Invented visit/);
    }
    expect.assertions(1 + 3 * visits.length);
  });

  it('wiring: every visit offers to leave it, and something else; loans and dated rebates occur', () => {
    for (const visit of visits) {
      expect(visit.choices[0]?.kind).toBe('leave');
      expect(visit.choices.length).toBeGreaterThanOrEqual(3);
    }
    const choices = visits.flatMap((visit) => visit.choices);
    expect(choices.some((choice) => choice.financing?.kind === 'levelLoan')).toBe(true);
    expect(choices.some((choice) => choice.rebates?.some((rebate) => rebate.lastDate !== undefined))).toBe(
      true,
    );
    expect.assertions(2 * visits.length + 2);
  });

  // Consumer price guides 2024-2026, read: replacement 4,000-16,000; labour 75-150 an hour; R-22 90-250, R-410A 40-120 a pound.
  it('outside: prices lie in the published ranges', () => {
    const lines = visits.flatMap((visit) => visit.choices.flatMap((choice) => choice.priceLines));
    const rates = lines.flatMap((line) => (line.kind === 'labour' ? [line.unitPriceUsd] : []));
    expect(rates.length).toBeGreaterThan(15);
    expect(Math.min(...rates)).toBeGreaterThanOrEqual(75);
    expect(Math.max(...rates)).toBeLessThanOrEqual(150);
    const pounds = lines.flatMap((line) => (line.kind === 'refrigerant' ? [line.unitPriceUsd] : []));
    expect(Math.min(...pounds)).toBeGreaterThanOrEqual(40);
    expect(Math.max(...pounds)).toBeLessThanOrEqual(250);
    const replacements = visits.flatMap((visit) =>
      visit.choices.flatMap((choice) =>
        choice.kind === 'replace'
          ? [
              choice.priceLines.reduce(
                (sum, l) => sum + (l.kind === 'tax' ? 0 : l.amount * l.unitPriceUsd),
                0,
              ),
            ]
          : [],
      ),
    );
    expect(Math.min(...replacements)).toBeGreaterThan(4_000);
    expect(Math.max(...replacements)).toBeLessThan(16_000);
  });
});
