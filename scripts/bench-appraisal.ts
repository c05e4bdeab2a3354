import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { appraise } from '../lib/appraise/appraise';
import { composeSheet } from '../lib/sheet/compose-sheet';
import type { Sheet } from '../lib/sheet/sheet';
import { readVisit } from '../lib/visit/read-visit';
import type { Visit } from '../lib/visit/visit';
import { durationText, timeAsync } from './bench-timing';

const TIMES = 15;

/** The demo's visits by file name. */
export function demoVisits(folder: string): { name: string; visit: Visit }[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => {
      const reading = readVisit(JSON.parse(readFileSync(path.join(folder, name), 'utf8')));
      if (!reading.ok) throw new Error(`${name}: ${JSON.stringify(reading.issues)}`);
      return { name, visit: reading.value };
    });
}

export function sheetOf(visit: Visit): Sheet {
  return composeSheet({ ...appraise(visit), locale: 'en' });
}

/** Rows: visit, whole appraisal, sheet as data, sheet over appraisal. */
export async function benchAppraisal(folder: string): Promise<string[][]> {
  const rows: string[][] = [];
  for (const { name, visit } of demoVisits(folder)) {
    const appraisal = appraise(visit);
    const whole = await timeAsync(async () => appraise(visit).comparison.choices.length, TIMES);
    const sheet = await timeAsync(
      async () => composeSheet({ ...appraisal, locale: 'en' }).pageOne.choices.rows.length,
      TIMES,
    );
    const ratio = sheet.nsPerCall / whole.nsPerCall;
    rows.push([name, durationText(whole.nsPerCall), durationText(sheet.nsPerCall), `${ratio.toFixed(2)} x`]);
  }
  return rows;
}
