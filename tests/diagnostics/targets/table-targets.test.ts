import { describe, expect, it } from 'vitest';
import { tableTargets } from '@/lib/diagnostics/targets/table-targets';
import { targetsOfRun } from '@/lib/diagnostics/targets/targets-of-run';
import type { Run } from '@/lib/visit/run';
import type { ChargingTable } from '@/lib/visit/unit';
import { contextOfRun } from '../support/visit-of';

const table: ChargingTable = {
  mode: 'cooling',
  outdoorF: [75, 85, 95],
  indoorF: [59, 67],
  suctionPsig: [
    [110, 126],
    [114, 130],
    [120, 136],
  ],
};

function at(run: Partial<Run>, tables: ChargingTable[] = [table]) {
  return contextOfRun({ mode: 'cooling', ...run }, { chargingTables: tables });
}

describe("targets by the unit's own charging table", () => {
  it('identity: a cell is its own target, 3 % either way, and the reading is judged', () => {
    const context = at({ outdoorAirF: 85, returnAirF: 78, returnWetBulbF: 67, suctionPsig: 118 });
    const { targets } = targetsOfRun(context, []);
    expect(targets.find(({ id }) => id === 'suctionPsig')).toMatchObject({
      value: 130,
      low: 130 * 0.97,
      high: 130 * 1.03,
      verdict: 'below',
      status: 'nameplate',
    });
  });

  it('identity: beyond the edge a note says so', () => {
    const [found] = tableTargets(at({ outdoorAirF: 105, returnAirF: 78, returnWetBulbF: 67 }));
    expect(found).toMatchObject({ value: 142, note: { code: 'beyondChargingTable', values: { steps: 1 } } });
  });

  it('identity: what is missing is named, once for each pressure the table has', () => {
    expect(tableTargets(at({ suctionPsig: 118 }))).toEqual([
      { id: 'suctionPsig', note: { code: 'tableNeedsOutdoor' } },
    ]);
    expect(tableTargets(at({ outdoorAirF: 85 }))).toEqual([
      { id: 'suctionPsig', note: { code: 'tableNeedsWetBulb' } },
    ]);
    const heating: ChargingTable = { ...table, mode: 'heating' };
    expect(tableTargets(at({ mode: 'heating', outdoorAirF: 85 }, [heating]))).toEqual([
      { id: 'suctionPsig', note: { code: 'tableNeedsReturn' } },
    ]);
    expect(tableTargets(at({ outdoorAirF: 85 }, [heating]))).toEqual([]);
  });

  it('identity: where its last step leads below zero there is no answer', () => {
    const steep: ChargingTable = {
      mode: 'cooling',
      outdoorF: [90, 95],
      indoorF: [67],
      suctionPsig: [[20], [100]],
    };
    expect(tableTargets(at({ outdoorAirF: 60 }, [steep]))).toEqual([
      { id: 'suctionPsig', note: { code: 'tableTooFar' } },
    ]);
  });
});
