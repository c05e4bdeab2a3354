// npm run bench: one run, so that its ratios compare like with like. Times depend on the machine, ratios hardly.
import path from 'node:path';
import { tableText } from '../lib/sheet/comparison-table';
import { benchAppraisal } from './bench-appraisal';
import { benchCauses, benchDiagnosis } from './bench-causes';
import { benchEnergy } from './bench-energy';
import { benchFinance } from './bench-finance';
import { benchPdf } from './bench-pdf';
import { benchRefrigerant } from './bench-refrigerant';

const demo = path.resolve(import.meta.dirname, '../data-demo');

function print(title: string, header: readonly string[], rows: readonly (readonly string[])[]): void {
  console.log(`\n${title}\n${tableText({ header, rows }, 48)}`);
}

console.log(
  `Node ${process.versions.node}, ${process.platform} ${process.arch}; each time is the middle of several.`,
);
print(
  'Refrigerant call: table against equation of state',
  ['call', 'table', 'equation', 'ratio'],
  benchRefrigerant(),
);
print(
  'Energy of a year, all scenarios with their ranges: against a bare loop over the same 12 x 24 x 5-F bins',
  ['visit', 'scenarios', 'yearlyEnergy()', 'bare loop', 'ratio'],
  benchEnergy(demo),
);
print('Diagnosis', ['visit', 'time', 'ratio'], benchDiagnosis());
const causes = benchCauses();
print(
  'Single faults: true cause put first, and among the first two',
  ['path', 'metering and mode', 'cases', 'first', 'first two'],
  causes.accuracy,
);
for (const { title, text } of causes.confusion) console.log(`\n${title}\n${text}`);
console.log(`\nNot counted, effect too small to feel:\n${causes.unfelt.join('\n')}`);
print('Appraisal', ['visit', 'appraise()', 'sheet as data', 'ratio'], await benchAppraisal(demo));
print(
  'Simulation: draws x choices x years, against a bare loop over typed arrays with the same arithmetic',
  ['draws x choices x years', 'simulate', 'bare loop', 'ratio'],
  benchFinance(demo),
);
print(
  'PDF: sheet against an empty page by the same library',
  ['document', 'time', 'size', 'ratio'],
  await benchPdf(demo),
);
