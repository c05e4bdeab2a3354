import { expect, test } from 'vitest';
import { billsLeftOut, withBills, withOnlyBills } from '@/components/energy/bills-draft';

const march = { fromDate: '2025-03-01', toDate: '2025-04-01', kwh: 900 };
const april = { fromDate: '2025-04-01', toDate: '2025-05-01', kwh: 700 };

test('wiring: bills pasted twice stand once, the newer table wins, and typed ones stay', () => {
  const typed = { bills: [{ fromDate: '2025-02-01', toDate: '2025-03-01', kwh: '1,100' }] };
  const once = withBills(typed, [april, march]);
  const twice = withBills(once, [{ ...march, kwh: 950 }]);
  expect(twice.bills).toEqual([typed.bills[0], { ...march, kwh: 950 }, april]);
});

test('wiring: bills whose days are in others are counted as left out, those of the same days are not', () => {
  const there = { bills: [march, april] };
  const third = { fromDate: '2025-03-03', toDate: '2025-04-03', kwh: 880 };
  const may = { fromDate: '2025-05-01', toDate: '2025-06-01', kwh: 500 };
  expect(billsLeftOut(there, [{ ...march, kwh: 950 }, may])).toEqual({ fresh: 0, there: 0 });
  expect(billsLeftOut(there, [third, may])).toEqual({ fresh: 1, there: 0 });
  // the one that ends first is looked at first, then march begins within it
  expect(billsLeftOut(there, [{ ...march, toDate: '2025-03-25' }])).toEqual({ fresh: 0, there: 1 });
  expect(billsLeftOut(there, [{ ...march, fromDate: '2025-02-25' }])).toEqual({ fresh: 0, there: 1 });
  expect(billsLeftOut({}, [march, april])).toEqual({ fresh: 0, there: 0 });
  expect(withOnlyBills(there, [may, third]).bills).toEqual([third, may]);
});
