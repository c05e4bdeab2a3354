import { expect, test } from 'vitest';
import { withBills } from '@/components/energy/bills-draft';

const march = { fromDate: '2025-03-01', toDate: '2025-04-01', kwh: 900 };
const april = { fromDate: '2025-04-01', toDate: '2025-05-01', kwh: 700 };

test('wiring: bills pasted twice stand once, the newer table wins, and typed ones stay', () => {
  const typed = { bills: [{ fromDate: '2025-02-01', toDate: '2025-03-01', kwh: '1,100' }] };
  const once = withBills(typed, [april, march]);
  const twice = withBills(once, [{ ...march, kwh: 950 }]);
  expect(twice.bills).toEqual([typed.bills[0], { ...march, kwh: 950 }, april]);
});
