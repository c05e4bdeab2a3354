import type { Flag } from '../findings';

/** Readings of one run that cannot all be true. */
export function conflict(
  runId: string,
  code: string,
  readings: readonly string[],
  values: Readonly<Record<string, string | number>>,
): Flag {
  return { code, severity: 'conflict', runId, readings, values };
}

/** A reading that calls for care whatever the economics say. */
export function danger(...[runId, code, readings, values]: Parameters<typeof conflict>): Flag {
  return { code, severity: 'danger', runId, readings, values };
}

/** A reading that may be right and still deserves a second look. */
export function doubt(...[runId, code, readings, values]: Parameters<typeof conflict>): Flag {
  return { code, severity: 'doubt', runId, readings, values };
}

/** To one decimal, for the sentence; the full value stays in the derived value. */
export function round(value: number): number {
  return Math.round(10 * value) / 10;
}
