// npm run schemas: writes the JSON Schemas of visit and appraisal to docs/, from zod and from the types.
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { schemaFiles, schemaText } from './sheet-schema';

for (const [file, make] of schemaFiles) {
  writeFileSync(path.resolve(import.meta.dirname, '..', file), schemaText(make()));
  console.log(file);
}
