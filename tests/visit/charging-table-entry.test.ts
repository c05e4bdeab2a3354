import { describe, expect, it } from 'vitest';
import { tableEntry, tableGaps, tableGrid } from '@/lib/visit/charging-table-entry';

describe('a charging table being typed', () => {
  it('identity: rows and columns without anything are left out, the others in rising order', () => {
    const entry = tableEntry({
      outdoorF: [95, null, 75],
      indoorF: [null, 67, null],
      suctionPsig: [
        [null, 136, null],
        [null, null, ''],
      ],
    });
    expect(tableGrid(entry)).toEqual({ rows: [2, 0], columns: [1] });
  });

  it('identity: a temperature that is no number yet leaves the order as typed', () => {
    expect(tableGrid(tableEntry({ outdoorF: [95, '7x', 75], indoorF: [67] })).rows).toEqual([0, 1, 2]);
  });

  it('identity: blanks are counted in the rows and columns in use; a pressure nobody typed is not wanted', () => {
    const gaps = tableGaps(
      tableEntry({ outdoorF: [75, 85, null], indoorF: [67, null], suctionPsig: [[126], [null, 130], [140]] }),
    );
    expect(gaps).toMatchObject({
      outdoorCount: 1,
      indoorCount: 1,
      suctionCount: 3,
      dischargeCount: 0,
      cellCount: 6,
      noPressures: false,
      firstBlank: ['outdoorF', 2],
    });
  });

  it('identity: anything that is no table is an empty one', () => {
    for (const data of [undefined, null, 3, 'x', { outdoorF: 5, suctionPsig: [7] }]) {
      expect(tableGaps(tableEntry(data))).toMatchObject({ outdoorCount: 0, noPressures: true });
    }
  });
});
