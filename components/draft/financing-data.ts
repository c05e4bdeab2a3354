import type { DraftValue } from './draft-tree';

type Plan = { readonly [key: string]: DraftValue };

const SHARED = ['downPaymentUsd', 'feeUsd', 'dealerFeeFrac', 'lender'];

/** What each way to pay holds; the first list is what it cannot do without. */
const KEYS: Readonly<
  Record<string, { readonly needed: readonly string[]; readonly more: readonly string[] }>
> = {
  cash: { needed: [], more: [] },
  levelLoan: { needed: ['rateFracPerYear', 'termMonths'], more: [...SHARED, 'firstPaymentDate'] },
  promotional: {
    needed: ['rateFracPerYear', 'promotionMonths', 'termMonths'],
    more: [...SHARED, 'monthlyPaymentUsd', 'expectedEnding'],
  },
};

const FURNACE_NEEDS = ['fuel', 'afueFrac', 'switchOverF'];

/** Whether something was typed there; spaces are nothing. */
function isTyped(value: DraftValue | undefined): boolean {
  return value !== undefined && value !== null && String(value).trim() !== '';
}

/** Whether a way to pay holds all it cannot do without. Check: tests/screens/financing-data.test.ts */
export function isFinishedPlan(plan: DraftValue | undefined): boolean {
  if (typeof plan !== 'object' || plan === null || Array.isArray(plan)) return false;
  const keys = KEYS[String(plan.kind)];
  return keys?.needed.every((key) => isTyped(plan[key])) ?? false;
}

/**
 * A way to pay as data: only what its kind holds, so that what was typed under another kind waits in the form.
 *
 * @returns `undefined` while what it cannot do without is missing: it then counts as paid at once
 * Check: tests/screens/financing-data.test.ts
 */
export function planData(plan: Plan): Plan | undefined {
  const keys = KEYS[String(plan.kind)];
  if (keys === undefined) return plan;
  if (!isFinishedPlan(plan)) return undefined;
  const kept = new Set(['kind', ...keys.needed, ...keys.more]);
  return Object.fromEntries(Object.entries(plan).filter(([key]) => kept.has(key)));
}

/** Whether a furnace holds all it cannot do without. Check: tests/screens/financing-data.test.ts */
export function isFinishedFurnace(furnace: DraftValue | undefined): boolean {
  if (typeof furnace !== 'object' || furnace === null || Array.isArray(furnace)) return false;
  return FURNACE_NEEDS.every((key) => isTyped(furnace[key]));
}
