import { describe, expect, it } from 'vitest';
import { fluidOf } from '../../scripts/synthesis/fluid';
import { enteringState, type Metering, meteredFlow, openSize } from '../../scripts/synthesis/metering';

const fluid = fluidOf('R-410A');
const orifice: Metering = { kind: 'fixedOrifice', size: 10 };
const valve: Metering = { kind: 'txv', fullSize: 13.5, closedFd: 4, openFd: 14 };
const upstreamPsia = fluid.bubblePsia(112);
const entering = (liquidF: number) =>
  enteringState(fluid, { psia: upstreamPsia, enthalpyBtuLb: fluid.liquidBtuLb(liquidF) });

describe('air in front of the metering device', () => {
  const psia = 400;
  const own = fluid.saturatedAt(0.86 * psia);

  it('identity: gas that leaves the condenser boils at its own share of the pressure, not at the whole of it', () => {
    const mixture = { psia, enthalpyBtuLb: own.liquidBtuLb + 2 };
    const entering = enteringState(fluid, { ...mixture, airInRefrigerantFrac: 0.14 });
    expect(entering.liquidF).toBeCloseTo(own.bubbleF, 6);
    expect(entering.qualityFrac).toBeGreaterThan(0);
    // without air the same enthalpy is plain liquid at that pressure
    expect(enteringState(fluid, mixture).qualityFrac).toBe(0);
  });

  it('identity: liquid colder than that is liquid with or without air over it', () => {
    const liquid = { psia, enthalpyBtuLb: own.liquidBtuLb - 3 };
    expect(enteringState(fluid, { ...liquid, airInRefrigerantFrac: 0.14 })).toEqual(
      enteringState(fluid, liquid),
    );
  });
});

describe('metering', () => {
  it('property: the fixed orifice feels subcooling but not the evaporator', () => {
    const at = (liquidF: number, evaporatorF: number): number =>
      meteredFlow(orifice, entering(liquidF), upstreamPsia, fluid.dewPsia(evaporatorF), 10);
    expect(at(100, 45)).toBe(at(100, 35));
    expect(at(92, 45)).toBeGreaterThan(at(100, 45));
  });

  // Short-tube tests: 10-15 % more flow per 10 F of subcooling, status memory; wide limits.
  it('outside: 10 F more subcooling gives 5 to 20 % more flow', () => {
    const flow = (liquidF: number): number => meteredFlow(orifice, entering(liquidF), upstreamPsia, 150, 10);
    expect(flow(97) / flow(107)).toBeGreaterThan(1.05);
    expect(flow(97) / flow(107)).toBeLessThan(1.2);
  });

  it('property: flash gas in front of the device chokes it', () => {
    const edge = fluid.saturatedAt(upstreamPsia);
    const flashed = enteringState(fluid, {
      psia: upstreamPsia,
      enthalpyBtuLb: edge.liquidBtuLb + 0.1 * (edge.vapourBtuLb - edge.liquidBtuLb),
    });
    expect(flashed.qualityFrac).toBeCloseTo(0.1, 9);
    const full = meteredFlow(orifice, entering(111), upstreamPsia, 150, 10);
    expect(meteredFlow(orifice, flashed, upstreamPsia, 150, 10)).toBeLessThan(0.9 * full);
  });

  it('property: the valve opens with superheat, shuts without it, and has an end', () => {
    expect(openSize(valve, 4)).toBeCloseTo(0.02 * 13.5, 9);
    expect(openSize(valve, 9)).toBeCloseTo(13.5 / 2, 9);
    expect(openSize(valve, 14)).toBe(13.5);
    expect(openSize(valve, 40)).toBe(13.5);
  });

  it('identity: a blocked share takes that share of the flow', () => {
    const open = meteredFlow(orifice, entering(100), upstreamPsia, 150, 10);
    expect(meteredFlow(orifice, entering(100), upstreamPsia, 150, 10, 0.3) / open).toBeCloseTo(0.7, 9);
  });
});
