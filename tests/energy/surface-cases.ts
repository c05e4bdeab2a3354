import { energyInput, lineOfVisit } from '@/lib/appraise/line-of-visit';
import { climateFor } from '@/lib/energy/climate';
import { type CostSurface, houseAt, type SurfacePlaces, surfaceCosts } from '@/lib/energy/cost-surface';
import {
  type EnergySurfaces,
  energySurfaces,
  lnRatioLimits,
  type ModeLaw,
} from '@/lib/energy/energy-surface';
import { furnaceBehind } from '@/lib/energy/furnace-behind';
import { replacementUnit } from '@/lib/energy/scenarios';
import { type UnitBins, unitBins } from '@/lib/energy/unit-bins';
import { unitTotals } from '@/lib/energy/unit-year';
import { houseOfYear } from '@/lib/energy/yearly-energy';
import type { Tariff } from '@/lib/visit/tariff';
import type { Visit } from '@/lib/visit/visit';

export const flat: Tariff = { kind: 'flat', energyUsdPerKwh: 0.15 };

/** Steep steps in places that the year of a house crosses. */
export const tiered: Tariff = {
  kind: 'tiered',
  seasons: [
    {
      months: [1, 2, 3, 4, 5, 10, 11, 12],
      tiers: [
        { upToKwh: 500, energyUsdPerKwh: 0.1 },
        { upToKwh: 1000, energyUsdPerKwh: 0.14 },
        { energyUsdPerKwh: 0.25 },
      ],
    },
    {
      months: [6, 7, 8, 9],
      tiers: [{ upToKwh: 700, energyUsdPerKwh: 0.12 }, { energyUsdPerKwh: 0.3 }],
    },
  ],
};

export type UnitCase = {
  readonly name: string;
  readonly surface: CostSurface;
  readonly bins: UnitBins;
  readonly sdLnPower?: { readonly heating: number; readonly cooling: number };
};

/** Surfaces of a visit with the bins behind each, so that a place can be worked out in full. */
export function surfaceCase(visit: Visit) {
  const climate = climateFor(visit.site.climate, visit.site.stateCode);
  const { findings, energy } = lineOfVisit(visit, climate);
  const given = energyInput(visit, findings, climate);
  const surfaces = energySurfaces(given);
  const { input, context } = houseOfYear(given);
  const stages = visit.unit.electricHeatStages;
  const { binF } = input.climate;
  const existing = unitBins(input.healthy, binF, context.load, { stages });
  const units: UnitCase[] = [{ name: 'existing', surface: surfaces.existing, bins: existing }];
  for (const choice of visit.choices) {
    const own = surfaces.newUnits[choice.id];
    if (choice.kind !== 'replace' || own === undefined) continue;
    const furnace =
      choice.furnace === undefined
        ? undefined
        : furnaceBehind(choice.furnace, visit, context.load, input.climate);
    const bins = unitBins(replacementUnit(visit, input.healthy, choice), binF, context.load, {
      stages,
      furnace,
    });
    units.push({ name: choice.id, bins, ...own });
  }
  return { visit, findings, energy, surfaces, context, units };
}

export type SurfaceCase = ReturnType<typeof surfaceCase>;

/** One place, each coordinate -4..4 standard deviations, and the share a repair gives back. */
export type Place = {
  readonly capacity: number;
  readonly power: number;
  readonly need: number;
  readonly backFrac: number;
};

type Ratios = { readonly lnCapacity: number; readonly power: number };

function modeAt(
  unit: UnitCase,
  mode: 'heating' | 'cooling',
  found: EnergySurfaces['found'],
  at: Place,
): Ratios {
  if (unit.sdLnPower !== undefined)
    return { lnCapacity: 0, power: Math.exp(at.power * unit.sdLnPower[mode]) };
  const law: ModeLaw = found[mode];
  const left = 1 - at.backFrac;
  const within = (x: number, { from, to }: { from: number; to: number }) => Math.min(to, Math.max(from, x));
  const { lnCapacity, lnPower } = law;
  return {
    lnCapacity: left * within(lnCapacity.mean + at.capacity * lnCapacity.sd, lnRatioLimits.capacity),
    power: Math.exp(left * within(lnPower.mean + at.power * lnPower.sd, lnRatioLimits.power)),
  };
}

/** The same place read from the surface and worked out over all bins [USD]. */
export function bothWays(c: SurfaceCase, unit: UnitCase, at: Place): { readUsd: number; fullUsd: number } {
  const heating = modeAt(unit, 'heating', c.surfaces.found, at);
  const cooling = modeAt(unit, 'cooling', c.surfaces.found, at);
  const one = (x: number) => Float64Array.of(x);
  const places: SurfacePlaces = {
    heatingLnCapacity: one(heating.lnCapacity),
    heatingPower: one(heating.power),
    coolingLnCapacity: one(cooling.lnCapacity),
    coolingPower: one(cooling.power),
    needZ: one(at.need),
  };
  const ratios = {
    heatingCapacity: Math.exp(heating.lnCapacity),
    heatingPower: heating.power,
    coolingCapacity: Math.exp(cooling.lnCapacity),
    coolingPower: cooling.power,
  };
  const house = { ...c.context, ...houseAt(c.context, at.need) };
  return {
    readUsd: surfaceCosts(unit.surface, places)[0] ?? Number.NaN,
    fullUsd: unitTotals(unit.bins, ratios, house).costUsd,
  };
}
