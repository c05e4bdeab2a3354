import { expect, test } from 'vitest';
import { billsFromTable, binsFromTable } from '@/components/energy/read-tables';

test('wiring: a pasted table says how many rows it gave and which it could not give', () => {
  const read = billsFromTable('Cost\tkWh\tTo\tFrom\n$120.10\t812\t2025-02-03\t2025-01-04\nnone\tx\ty\tz');
  expect(read.bills).toEqual([{ fromDate: '2025-01-04', toDate: '2025-02-03', kwh: 812, costUsd: 120.1 }]);
  expect(read.done).toBe('1 bill taken over.');
  expect(read.notes).toEqual([
    'Row 3 is left out: “x” is not read as kilowatt-hours. Write a number such as 1240 or 1,240.',
    'Row 3 is left out: “y” is not read as a date. Dates are read as 2026-03-14, 3/14/2026 (the month first), or for a whole month 2026-03 or Mar 2026.',
    'Row 3 is left out: “z” is not read as a date. Dates are read as 2026-03-14, 3/14/2026 (the month first), or for a whole month 2026-03 or Mar 2026.',
  ]);
});

test('wiring: a table without its columns takes nothing over and says what is missing', () => {
  expect(billsFromTable('Date,Cost\n2025-01-04,12')).toEqual({
    bills: [],
    done: '',
    notes: ['No column with kilowatt-hours was found: name it kWh.'],
  });
  expect(binsFromTable('').notes).toEqual(['There is nothing in the bin table.']);
  expect(binsFromTable('Temperature, Hours\n62, 701\n67, many').notes).toHaveLength(1);
  expect(binsFromTable('Temperature, Hours\n62, 701').bins).toEqual([{ outdoorF: 62, yearHours: 701 }]);
});
