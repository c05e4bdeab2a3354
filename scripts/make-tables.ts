import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { buildTable } from '../lib/diagnostics/refrigerant/build-table';
import { eosData } from '../lib/diagnostics/refrigerant/eos-data';
import type { RefrigerantName } from '../lib/visit/refrigerant-names';

// Writes the refrigerant property tables that ship to the browser, from the published equations of state.
// tests/diagnostics/refrigerant/tables.test.ts builds them again and compares with what is checked in.
const folder = fileURLToPath(new URL('../lib/diagnostics/refrigerant/data/tables/', import.meta.url));
mkdirSync(folder, { recursive: true });
for (const name of Object.keys(eosData) as RefrigerantName[]) {
  const text = `${JSON.stringify(buildTable(name))}\n`;
  writeFileSync(`${folder}${name}.json`, text);
  console.log(`${name}: ${text.length} bytes, ${gzipSync(text).length} gzip`);
}
