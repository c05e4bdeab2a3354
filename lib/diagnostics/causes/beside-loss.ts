import { isClearLoss } from '../explain/explain-loss';
import type { CausesFound, Findings, Loss } from '../findings';
import table from './data/beside-loss.json';

/**
 * Causes told beside the loss: which other one explains most of it, and no "severe" where neither cause nor loss is
 * sure.
 *
 * @param causes  causes by chance
 * @param loss    loss of each mode with the share of each cause
 * @returns causes in their own order
 * Source: data/beside-loss.json
 * Check: tests/diagnostics/causes/beside-loss.test.ts
 */
export function besideLoss(causes: CausesFound, loss: Findings['loss']): CausesFound {
  const clear = [loss.heating, loss.cooling].filter((one) => one !== undefined).filter(isClearLoss);
  const softened = causes.causes.map((cause) =>
    cause.severity.word === 'severe' &&
    clear.length === 0 &&
    cause.probability < table.severeFromChanceFrac.value
      ? { ...cause, severity: { ...cause.severity, word: 'moderate' as const } }
      : cause,
  );
  const most = causes.verdict === 'found' ? otherMost(causes, clear) : undefined;
  return { ...causes, causes: softened, ...(most === undefined ? {} : { explainsMost: most }) };
}

function otherMost(causes: CausesFound, clear: readonly Loss[]): CausesFound['explainsMost'] {
  const top = causes.causes[0]?.cause;
  const likely = new Set(
    causes.causes
      .filter(({ probability }) => probability >= table.namedFromChanceFrac.value)
      .map(({ cause }) => cause),
  );
  return clear
    .flatMap(({ shares }) => shares ?? [])
    .filter(({ cause, shareFrac }) => cause !== top && likely.has(cause) && shareFrac >= table.mostFrac.value)
    .sort((a, b) => b.shareFrac - a.shareFrac)[0];
}
