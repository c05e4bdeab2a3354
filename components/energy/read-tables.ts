import { tn } from '@/components/words/words';
import { readBillsCsv } from '@/lib/energy/bills/read-bills-csv';
import { readBinsCsv } from '@/lib/energy/read-bins-csv';
import energyEn from '@/lib/energy/wording/en.json';
import { type Saying, say } from '@/lib/visit/wording';

/** A pasted table of bills, what was read and what was not, in words. Check: tests/screens/read-tables.test.ts */
export function billsFromTable(text: string) {
  const { bills, notes } = readBillsCsv(text);
  return { bills, done: doneWords(bills.length, 'bills.read'), notes: notes.map(told) };
}

/** A pasted table of temperature bins. Check: tests/screens/read-tables.test.ts */
export function binsFromTable(text: string) {
  const { bins, notes } = readBinsCsv(text);
  return { bins, done: doneWords(bins.length, 'climate.binsRead'), notes: notes.map(told) };
}

function doneWords(count: number, code: 'bills.read' | 'climate.binsRead'): string {
  return count === 0 ? '' : tn(code, count);
}

function told(saying: Saying): string {
  return say(energyEn, saying);
}
