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
  replacementUsd: number;
  replacementEnergyUsd: number;
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
  /** Running costs, failures and value left of a choice in today's money; without what the choice itself costs. */
  readonly runningTodayUsd: (unit: KernelUnit) => number;
};

/**
 * Expected cost of a choice for one draw after another, made for tens of thousands of draws: no object is made
 * inside. The cost of everything after a new unit is put in at the end of a year is worked out once per draw by
 * renewal, backward from the end of the stay; each choice then only adds its own first unit.
 *
 * @param years  whole years of the stay, >= 1
 * @param midYear  yearly costs fall in the middle of their year
 * @param oldFromAgeYears  age from which small repairs cost as for an old unit
 * @returns a kernel with buffers of its own: not to be shared between workers
 * Source: renewal equation over the age of the unit in place; agrees with the recursion of `expectedYears`
 * Check: tests/finance/simulation-kernel.test.ts
 */
export function simulationKernel(years: number, midYear: boolean, oldFromAgeYears: number): Kernel {
  const newHazard = new Float64Array(years + 1);
  const newSurvives = new Float64Array(years + 1);
  const newRunning = new Float64Array(years + 1);
  /** Value today of all that follows when a new unit starts after year s. */
  const after = new Float64Array(years + 1);
  const priceToday = new Float64Array(years + 1);
  const energyToday = new Float64Array(years + 1);
  /** Cumulative hazard of a unit of the age last asked for, since most choices start with the same unit. */
  const agedHazard = new Float64Array(years + 1);
  let agedYears = Number.NaN;
  /** Logarithms of the ages ahead: they hardly ever change from draw to draw. */
  const lnAged = new Float64Array(years + 1);
  let lnAgedFrom = Number.NaN;
  let draw: KernelDraw | undefined;
  let lnScale = 0;
  const lnYears = Float64Array.from({ length: years + 1 }, (_, t) => Math.log(t));
  let endPrices = 1;

  const upkeepAt = (d: KernelDraw, age: number): number =>
    d.upkeepUsd +
    d.smallRepairsNewUsd +
    (d.smallRepairsOldUsd - d.smallRepairsNewUsd) * (age < oldFromAgeYears ? age / oldFromAgeYears : 1);

  const start = (d: KernelDraw): void => {
    draw = d;
    agedYears = Number.NaN;
    lnScale = Math.log(d.medianLifeYears) - Math.log(Math.LN2) / d.shape;
    const priceStep = (1 + d.inflationFrac) / (1 + d.discountFrac);
    const energyStep = (1 + d.escalationFrac) / (1 + d.discountFrac);
    priceToday[0] = midYear ? 1 / Math.sqrt(priceStep) : 1;
    energyToday[0] = midYear ? 1 / Math.sqrt(energyStep) : 1;
    newSurvives[0] = 1;
    endPrices = priceStep ** years;
    for (let t = 1; t <= years; t += 1) {
      priceToday[t] = (priceToday[t - 1] as number) * priceStep;
      energyToday[t] = (energyToday[t - 1] as number) * energyStep;
      newHazard[t] = Math.exp(d.shape * ((lnYears[t] as number) - lnScale));
      newSurvives[t] = Math.exp(-(newHazard[t] as number));
      newRunning[t] = upkeepAt(d, t - 1);
    }
    for (let s = years; s >= 1; s -= 1) after[s] = newUnitFrom(d, s);
  };

  /** Cost today of all that follows a new unit put in at the end of year s; later years are known already. */
  const newUnitFrom = (d: KernelDraw, s: number): number => {
    const failedUsd = d.replacementUsd * (1 + d.premiumFrac);
    let sum = 0;
    for (let j = 1; s + j <= years; j += 1) {
      const alive = newSurvives[j - 1] as number;
      const prices = priceToday[s + j] as number;
      sum +=
        alive *
        ((newRunning[j] as number) * prices + d.replacementEnergyUsd * (energyToday[s + j] as number));
      sum += (alive - (newSurvives[j] as number)) * (failedUsd * prices + (after[s + j] as number));
    }
    const age = years - s;
    const left = Math.max(0, 1 - age / d.medianLifeYears) * d.replacementUsd * d.valueLeftFrac * endPrices;
    return sum - (newSurvives[age] as number) * left;
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
    for (let t = 1; t <= years; t += 1)
      agedHazard[t] = Math.exp(d.shape * ((lnAged[t] as number) - lnScale)) - used;
    return agedHazard;
  };

  const runningTodayUsd = (unit: KernelUnit): number => {
    const d = draw as KernelDraw;
    const failedUsd = d.replacementUsd * (1 + d.premiumFrac);
    const hazard = hazardFrom(d, unit.ageYears);
    let alive = 1;
    let sum = 0;
    for (let t = 1; t <= years; t += 1) {
      const stillAlive = Math.exp(-unit.hazardRatio * (hazard[t] as number));
      const prices = priceToday[t] as number;
      const running =
        upkeepAt(d, unit.ageYears + t - 1) * prices + unit.energyUsd * (energyToday[t] as number);
      sum += alive * running + (alive - stillAlive) * (failedUsd * prices + (after[t] as number));
      alive = stillAlive;
      if (t === unit.plannedYear) return sum + alive * (d.replacementUsd * prices + (after[t] as number));
    }
    const left = Math.max(0, 1 - (unit.ageYears + years) / d.medianLifeYears) * unit.leavesUsd;
    return sum - alive * left * d.valueLeftFrac * endPrices;
  };
  return { start, runningTodayUsd };
}
