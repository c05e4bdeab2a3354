import { describe, expect, it } from 'vitest';
import { readBillsCsv } from '@/lib/energy/bills/read-bills-csv';
import words from '@/lib/energy/wording/en.json';

const phrases: Readonly<Record<string, string>> = words;

describe('wiring: pasted bills', () => {
  it('reads any column order, American dates, dollar signs and thousands commas', () => {
    const { bills, notes } = readBillsCsv(
      'Amount,Start date,End date,Usage (kWh)\n"$1,203.50",1/5/2025,2/4/2025,"1,450"\n$98.10,2/4/25,3/6/25,812 kWh\n',
    );
    expect(notes).toEqual([]);
    expect(bills).toEqual([
      { fromDate: '2025-01-05', toDate: '2025-02-04', kwh: 1450, costUsd: 1203.5 },
      { fromDate: '2025-02-04', toDate: '2025-03-06', kwh: 812, costUsd: 98.1 },
    ]);
  });

  it('with one date per row each period begins where the one before ends', () => {
    const { bills } = readBillsCsv('Read date;kWh\n2025-03-05;700\n2025-02-03;900\n');
    expect(bills).toEqual([
      { fromDate: '2025-01-04', toDate: '2025-02-03', kwh: 900 },
      { fromDate: '2025-02-03', toDate: '2025-03-05', kwh: 700 },
    ]);
  });

  it('takes months by number or name, tab-separated', () => {
    const { bills } = readBillsCsv('Month\tkWh\n2025-12\t700\nFeb 2024\t650\n');
    expect(bills).toEqual([
      { fromDate: '2024-02-01', toDate: '2024-03-01', kwh: 650 },
      { fromDate: '2025-12-01', toDate: '2026-01-01', kwh: 700 },
    ]);
  });

  it('marks estimated reads', () => {
    const { bills } = readBillsCsv(
      'from,to,kWh,Read type\n2025-01-01,2025-02-01,500,Estimated\n2025-02-01,2025-03-01,480,Actual\n',
    );
    expect(bills.map((b) => b.estimated)).toEqual([true, undefined]);
  });

  it('names rows it cannot read and reads the rest', () => {
    const { bills, notes } = readBillsCsv('date,kWh\n2025-02-01,abc\n2025-03-01,600\n2025-13-40,600\n');
    expect(bills).toHaveLength(1);
    expect(notes.map((n) => n.values?.row)).toEqual([2, 4]);
  });

  it('says what is missing', () => {
    const of = (text: string) => readBillsCsv(text).notes.map((n) => n.code);
    expect(of('')).toEqual(['billsEmpty']);
    expect(of('date,dollars\n2025-01-01,5')).toEqual(['billsNoKwhColumn']);
    expect(of('kWh,cost\n1,2')).toEqual(['billsNoDateColumn']);
    expect(of('from,kWh\n2025-01-01,5')).toEqual(['billsDateEmpty']);
    expect(of('date,kWh\n2025-01-01,')).toEqual(['billsKwhEmpty']);
  });

  it('names the cell of a row it cannot read: a day-first date, a word for a number', () => {
    const of = (row: string) => readBillsCsv(`from,to,kWh,cost,mean temp\n${row}`);
    expect(of('13/1/2025,2/13/2025,700,90,40')).toEqual({
      bills: [],
      notes: [{ code: 'billsDateUnread', values: { row: 2, cell: '13/1/2025' } }],
    });
    expect(of('1/13/2025,2/13/2025,many,90,40').notes).toEqual([
      { code: 'billsKwhUnread', values: { row: 2, cell: 'many' } },
    ]);
  });

  it('takes a bill without a cost or mean temperature it cannot read, and says so', () => {
    const { bills, notes } = readBillsCsv(
      'from,to,kWh,cost,mean temp\n1/13/2025,2/13/2025,700,see over,mild',
    );
    expect(bills).toEqual([{ fromDate: '2025-01-13', toDate: '2025-02-13', kwh: 700 }]);
    expect(notes).toEqual([
      { code: 'billsCostUnread', values: { row: 2, cell: 'see over' } },
      { code: 'billsMeanUnread', values: { row: 2, cell: 'mild' } },
    ]);
  });

  it('has words for everything it says', () => {
    const said = ['Empty', 'NoKwhColumn', 'NoDateColumn', 'DateUnread', 'DateEmpty'];
    const codes = [...said, 'KwhUnread', 'KwhEmpty', 'CostUnread', 'MeanUnread'].map((end) => `bills${end}`);
    expect(codes.filter((code) => phrases[code] === undefined)).toEqual([]);
  });
});
