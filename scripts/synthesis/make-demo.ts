import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readVisit } from '../../lib/visit/read-visit';
import { asFile, demoVisits } from './demo/demo-visits';

// Writes the invented visits to data-demo; run with: npx tsx scripts/synthesis/make-demo.ts
const folder = fileURLToPath(new URL('../../data-demo/', import.meta.url));
for (const visit of demoVisits()) {
  const reading = readVisit(JSON.parse(asFile(visit)));
  if (!reading.ok) {
    console.error(visit.id, JSON.stringify(reading.issues, null, 1));
    process.exitCode = 1;
    continue;
  }
  writeFileSync(`${folder}${visit.id}.json`, asFile(visit));
  console.log(`wrote data-demo/${visit.id}.json`);
}
