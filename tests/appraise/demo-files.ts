import { readdirSync, readFileSync } from 'node:fs';
import { readVisit } from '@/lib/visit/read-visit';
import type { Visit } from '@/lib/visit/visit';

const folder = new URL('../../data-demo/', import.meta.url);

/** Every invented visit as shipped. */
export const demoFiles: readonly Visit[] = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => {
    const reading = readVisit(JSON.parse(readFileSync(new URL(name, folder), 'utf8')));
    if (!reading.ok) throw new Error(`${name}: ${JSON.stringify(reading.issues)}`);
    return reading.value;
  });
