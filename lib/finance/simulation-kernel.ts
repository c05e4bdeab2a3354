/** One draw of everything a plan needs, as plain numbers; money in prices of the visit, rates per year. */
export type KernelDraw = {
  discountFrac: number;
  inflationFrac: number;
  escalationFrac: number;
  shape: number;
  medianLifeYears: number;
  premiumFrac: number;
  upkeepUsd: number;
  smallRepairsOldUsd: number;
  smallRepairsNewUsd: number;
  valueLeftFrac: number;
};

/** The unit a choice starts with. */
export type KernelUnit = {
  ageYears: number;
  hazardRatio: number;
  energyUsd: number;
  /** Price that leaves a value behind; 0 = none. */
  leavesUsd: number;
  /** It is replaced at the end of this year if it still runs; 0 = only when it fails. */
  plannedYear: number;
};

export type Kernel = {
  /** Prepares everything that all choices of one draw share. */
  readonly start: (draw: KernelDraw) => void;
  /** Says what a unit that fails in this draw is replaced by; its price, and its energy in a year [USD]. */
  readonly succeed: (priceUsd: number, energyUsd: number) => void;
  /** Running costs, failures and value left of a choice in today's money; without what the choice itself costs. */
  readonly runningTodayUsd: (unit: KernelUnit) => number;
};

/**
 * Expected cost of a choice for one draw after another, made for tens of thousands of draws: no object is made
 * inside. The cost of everything after a new unit is put in at the end of a year is worked out once per draw by
 * renewal, backward from the end of the stay; each choice then only adds its own first unit. Prices of later years are
 * powers of one step, so that a new unit's own costs are sums over its age, whatever year it starts in.
 *
 * @param years  whole years of the stay, >= 1
 * @param midYear  yearly costs fall in the middle of their year
 * @param oldFromAgeYears  age from which small repairs cost as for an old unit
 * @returns a kernel with buffers of its own: not to be shared between workers
 * Source: renewal equation over the age of the unit in place; agrees with the recursion of `expectedYears`
 * Check: tests/finance/simulation-kernel.test.ts
 */
export function simulationKernel(years: number, midYear: boolean, oldFromAgeYears: number): Kernel {
  const column = (): Float64Array => new Float64Array(years + 1);
  const newSurvives = column();
  /** Chance that a new unit fails in a year of its life. */
  const newFails = column();
  /** Sums over the first years of a new unit's life, in money of its start: running, energy for a dollar, failures. */
  const [newRunning, newEnergy, newFailing] = [column(), column(), column()];
  /** Value today of all that follows when a new unit starts after year s. */
  const after = column();
  const priceToday = column();
  const energyToday = column();
  const lnYears = Float64Array.from({ length: years + 1 }, (_, t) => Math.log(t));
  /** Hazard so far of a unit of the age last asked for, and its survival at the ratio last asked for. */
  const newHazard = column();
  const agedHazard = column();
  const survives = column();
  /** Upkeep and small repairs of a unit of that age, and of a new one, in today's money. */
  const agedRunning = column();
  const freshRunning = column();
  /** What a failure in a year brings with it, in today's money. */
  const failing = column();
  let agedYears = Number.NaN;
  let survivesYears = Number.NaN;
  let survivesRatio = Number.NaN;
  /** The last unit of this draw and successor: all but its energy, and what a dollar of yearly energy comes to. */
  const last = { ageYears: Number.NaN, hazardRatio: 0, leavesUsd: 0, plannedYear: 0 };
  let lastUsd = 0;
  let lastPerEnergyUsd = 0;
  /** Logarithms of the ages ahead: they hardly ever change from draw to draw. */
  const lnAged = column();
  let lnAgedFrom = Number.NaN;
  let draw: KernelDraw | undefined;
  let lnScale = 0;
  let endPrices = 1;
  let priceUsd = 0;

  const upkeepAt = (d: KernelDraw, age: number): number =>
    d.upkeepUsd +
    d.smallRepairsNewUsd +
    (d.smallRepairsOldUsd - d.smallRepairsNewUsd) * (age < oldFromAgeYears ? age / oldFromAgeYears : 1);

  const start = (d: KernelDraw): void => {
    draw = d;
    agedYears = Number.NaN;
    survivesYears = Number.NaN;
    lnScale = Math.log(d.medianLifeYears) - LN_LN_2 / d.shape;
    const priceStep = (1 + d.inflationFrac) / (1 + d.discountFrac);
    const energyStep = (1 + d.escalationFrac) / (1 + d.discountFrac);
    priceToday[0] = midYear ? 1 / Math.sqrt(priceStep) : 1;
    energyToday[0] = midYear ? 1 / Math.sqrt(energyStep) : 1;
    newSurvives[0] = 1;
    let prices = 1;
    let energies = 1;
    for (let t = 1; t <= years; t += 1) {
      prices *= priceStep;
      energies *= energyStep;
      priceToday[t] = (priceToday[0] as number) * prices;
      energyToday[t] = (energyToday[0] as number) * energies;
      const alive = newSurvives[t - 1] as number;
      const hazard = Math.exp(d.shape * ((lnYears[t] as number) - lnScale));
      const still = Math.exp(-hazard);
      newHazard[t] = hazard;
      newSurvives[t] = still;
      newFails[t] = alive - still;
      const upkeep = upkeepAt(d, t - 1) * prices;
      freshRunning[t] = (priceToday[0] as number) * upkeep;
      newRunning[t] = (newRunning[t - 1] as number) + alive * upkeep;
      newEnergy[t] = (newEnergy[t - 1] as number) + alive * energies;
      newFailing[t] = (newFailing[t - 1] as number) + (alive - still) * prices;
    }
    endPrices = prices;
  };

  const succeed = (usd: number, energyUsd: number): void => {
    const d = draw as KernelDraw;
    priceUsd = usd;
    const failedUsd = usd * (1 + d.premiumFrac);
    for (let s = years; s >= 1; s -= 1) {
      const age = years - s;
      let sum =
        (priceToday[s] as number) * ((newRunning[age] as number) + failedUsd * (newFailing[age] as number)) +
        (energyToday[s] as number) * energyUsd * (newEnergy[age] as number);
      for (let j = 1; j <= age; j += 1) sum += (newFails[j] as number) * (after[s + j] as number);
      const left = Math.max(0, 1 - age / d.medianLifeYears) * usd * d.valueLeftFrac * endPrices;
      after[s] = sum - (newSurvives[age] as number) * left;
      failing[s] = failedUsd * (priceToday[s] as number) + (after[s] as number);
    }
    last.ageYears = Number.NaN;
  };

  const hazardFrom = (d: KernelDraw, ageYears: number): Float64Array => {
    if (ageYears === 0) return newHazard;
    if (ageYears === agedYears) return agedHazard;
    agedYears = ageYears;
    if (ageYears !== lnAgedFrom) {
      lnAgedFrom = ageYears;
      for (let t = 0; t <= years; t += 1) lnAged[t] = Math.log(ageYears + t);
    }
    const used = Math.exp(d.shape * ((lnAged[0] as number) - lnScale));
    for (let t = 1; t <= years; t += 1) {
      agedHazard[t] = Math.exp(d.shape * ((lnAged[t] as number) - lnScale)) - used;
      agedRunning[t] = upkeepAt(d, ageYears + t - 1) * (priceToday[t] as number);
    }
    return agedHazard;
  };

  /** Most choices of a draw start with the same unit at the same risk. */
  const survivalOf = (d: KernelDraw, unit: KernelUnit): Float64Array => {
    if (unit.ageYears === 0 && unit.hazardRatio === 1) return newSurvives;
    if (unit.ageYears === survivesYears && unit.hazardRatio === survivesRatio) return survives;
    const hazard = hazardFrom(d, unit.ageYears);
    survivesYears = unit.ageYears;
    survivesRatio = unit.hazardRatio;
    for (let t = 1; t <= years; t += 1) survives[t] = Math.exp(-survivesRatio * (hazard[t] as number));
    return survives;
  };

  const live = (d: KernelDraw, unit: KernelUnit): void => {
    const survival = survivalOf(d, unit);
    const { ageYears, plannedYear } = unit;
    hazardFrom(d, ageYears);
    const running = ageYears === 0 ? freshRunning : agedRunning;
    let alive = 1;
    let usd = 0;
    let perEnergyUsd = 0;
    const end = plannedYear === 0 || plannedYear > years ? years : plannedYear;
    for (let t = 1; t <= end; t += 1) {
      const still = survival[t] as number;
      usd += alive * (running[t] as number) + (alive - still) * (failing[t] as number);
      perEnergyUsd += alive * (energyToday[t] as number);
      alive = still;
    }
    if (end === plannedYear) {
      usd += alive * (priceUsd * (priceToday[end] as number) + (after[end] as number));
    } else {
      const left = Math.max(0, 1 - (ageYears + years) / d.medianLifeYears) * unit.leavesUsd;
      usd -= alive * left * d.valueLeftFrac * endPrices;
    }
    lastUsd = usd;
    lastPerEnergyUsd = perEnergyUsd;
  };

  const runningTodayUsd = (unit: KernelUnit): number => {
    const { ageYears, hazardRatio, leavesUsd, plannedYear } = unit;
    if (
      ageYears !== last.ageYears ||
      hazardRatio !== last.hazardRatio ||
      leavesUsd !== last.leavesUsd ||
      plannedYear !== last.plannedYear
    ) {
      live(draw as KernelDraw, unit);
      last.ageYears = ageYears;
      last.hazardRatio = hazardRatio;
      last.leavesUsd = leavesUsd;
      last.plannedYear = plannedYear;
    }
    return lastUsd + unit.energyUsd * lastPerEnergyUsd;
  };
  return { start, succeed, runningTodayUsd };
}

const LN_LN_2 = Math.log(Math.LN2);
