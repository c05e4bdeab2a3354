import { describe, expect, it } from 'vitest';
import { comfortCheck } from '@/lib/energy/comfort-check';
import words from '@/lib/energy/wording/en.json';
import { energyOf, exampleLoss, exampleVisit, lossOf, scenarioNamed } from './example-visit';

const asFound = scenarioNamed(energyOf(exampleVisit()), 'asFound').likely;
const year = (unmetHeatingHours: number, unmetCoolingHours: number) => ({
  ...asFound,
  unmetHeatingHours,
  unmetCoolingHours,
  unmetHours: unmetHeatingHours + unmetCoolingHours,
});
const codes = (site: object, hours: [number, number], heats = true) =>
  comfortCheck(exampleVisit({ site }), year(...hours), heats).map((n) => n.code);

describe('wiring: what the customer says against unmet hours', () => {
  it('speaks up where the two do not fit, in either direction and for the right mode', () => {
    expect(codes({ heatingComfort: 'keepsUp' }, [400, 0])).toEqual(['comfortKeepsUp']);
    expect(codes({ coolingComfort: 'fallsShort' }, [400, 3])).toEqual(['comfortFallsShort']);
    expect(comfortCheck(exampleVisit({ site: { coolingComfort: 'keepsUp' } }), year(0, 312.4), true)).toEqual(
      [{ code: 'comfortKeepsUp', values: { mode: 'cooling', hours: 312 } }],
    );
  });

  it('is silent where they fit, in between, and about heating the unit does not do', () => {
    expect(codes({ heatingComfort: 'keepsUp', coolingComfort: 'fallsShort' }, [10, 200])).toEqual([]);
    expect(codes({ heatingComfort: 'keepsUp' }, [100, 0])).toEqual([]);
    expect(codes({ heatingComfort: 'keepsUp' }, [400, 0], false)).toEqual([]);
    expect(codes({}, [400, 400])).toEqual([]);
  });

  it('takes the observation when nobody asked', () => {
    const visit = exampleVisit({ observations: [{ id: 'neverKeepsUp' }] });
    expect(comfortCheck(visit, year(0, 5), true).map((n) => n.code)).toEqual(['comfortNeverKeepsUp']);
    expect(comfortCheck(visit, year(0, 50), true)).toEqual([]);
    const named = Object.keys(words).filter((code) => code.startsWith('comfort'));
    expect(named).toEqual(['comfortKeepsUp', 'comfortFallsShort', 'comfortNeverKeepsUp']);
  });

  it('reaches the result: a unit that has lost most of its capacity and is said to keep up', () => {
    const low = { low: 0.3, likely: 0.35, high: 0.4 };
    const loss = { ...exampleLoss, cooling: lossOf('cooling', low, { low: 0.9, likely: 1, high: 1.1 }) };
    const said = exampleVisit({
      site: { climate: { kind: 'city', city: 'phoenix-az' }, coolingComfort: 'keepsUp' },
    });
    expect(energyOf(said, loss).notes.map((n) => n.code)).toContain('comfortKeepsUp');
  });
});
