import targets from '../data/targets.json';
import { type RunContext, reading } from '../run-context';
import type { Sourced } from '../sourced';
import type { Verdict } from '../verdict';
import data from './data/measuring.json';
import type { StaticBudget, StaticPart, StaticPartId } from './measuring';

type Usual = { readonly low: number; readonly high: number; readonly source: string };
type Amount = { readonly value: number; readonly sd: number };
type Doubt = NonNullable<StaticBudget['doubt']>;

/**
 * Who uses how much of the static pressure: filter, coil, return and supply.
 *
 * @param context  run with its unit
 * @returns parts in the order the air passes them. The filter lies in the return static; the coil in the side the
 * technician says, else it is told apart. A part larger than its side by more than both uncertainties is a doubt and
 * leaves that side whole. Absent when none of the four was read.
 * Source: data/targets.json and data/measuring.json (web duct-design guides, no standard behind them), status read
 * Check: tests/diagnostics/measuring/static-budget.test.ts
 */
export function staticBudget(context: RunContext): StaticBudget | undefined {
  const back = sized(reading(context, 'returnStaticInWc'));
  const supply = sized(reading(context, 'supplyStaticInWc'));
  const filter = sized(reading(context, 'filterDropInWc'));
  const coil = sized(reading(context, 'coilDropInWc'));
  if (back === undefined && supply === undefined && filter === undefined && coil === undefined) {
    return undefined;
  }
  const coilIn = context.visit.unit.coilCountedIn;
  const coilBefore = coilIn === 'returnStatic' ? coil : undefined;
  const coilAfter = coilIn === 'supplyStatic' ? coil : undefined;
  const doubt = doubtOf({ back, supply, filter, coil, coilBefore, coilAfter, coilIn });
  const parts = [
    ...returnParts(back, filter, coilBefore, coilIn === 'returnStatic' && coil === undefined, doubt),
    ...supplyParts(supply, coilAfter, coilIn === 'supplyStatic' && coil === undefined, doubt),
  ];
  const total = back === undefined || supply === undefined ? undefined : sum(back, supply);
  const apart = coil !== undefined && coilBefore === undefined && coilAfter === undefined;
  const largest = total === undefined ? undefined : [...parts].sort((a, b) => b.inWc - a.inWc)[0];
  return {
    parts: total === undefined ? parts : parts.map((p) => ({ ...p, shareFrac: p.inWc / total.value })),
    ...limitOf(context, total),
    ...(total === undefined ? {} : { totalInWc: total.value, totalSdInWc: total.sd }),
    ...(largest === undefined ? {} : { largest: largest.id }),
    ...(apart ? { coilApart: part('coil', coil, targets.coilDrop) } : {}),
    ...(doubt === undefined ? {} : { doubt }),
  };
}

function limitOf(
  context: RunContext,
  total: Amount | undefined,
): Pick<StaticBudget, 'limitInWc' | 'limitFrom' | 'acceptedInWc' | 'verdict'> {
  const { value, high } = targets.totalExternalStatic;
  const rated = context.visit.unit.ratedStaticInWc;
  const limits = { limitInWc: rated ?? value, acceptedInWc: rated ?? high };
  const over = (limit: number): boolean => total !== undefined && total.value > limit + 1e-9;
  return {
    ...limits,
    limitFrom: rated === undefined ? 'common' : 'nameplate',
    ...(total === undefined
      ? {}
      : {
          verdict: over(limits.acceptedInWc) ? 'overLimit' : over(limits.limitInWc) ? 'overRated' : 'within',
        }),
  };
}

function returnParts(
  back: Amount | undefined,
  filter: Amount | undefined,
  coil: Amount | undefined,
  coilUnread: boolean,
  doubt: Doubt | undefined,
): StaticPart[] {
  const known = [
    ...(filter === undefined ? [] : [part('filter', filter, targets.filterDrop)]),
    ...(coil === undefined ? [] : [part('coil', coil, targets.coilDrop)]),
  ];
  if (back === undefined) return known;
  if (doubt === 'filterBeyondReturn' || doubt === 'coilBeyondReturn') return [part('returnSide', back)];
  const rest = without(without(back, filter), coil);
  if (filter === undefined || coilUnread) return [part('returnSide', rest), ...known];
  return [part('returnDucts', rest, data.statics.returnDucts), ...known];
}

function supplyParts(
  supply: Amount | undefined,
  coil: Amount | undefined,
  coilUnread: boolean,
  doubt: Doubt | undefined,
): StaticPart[] {
  const known = coil === undefined ? [] : [part('coil', coil, targets.coilDrop)];
  if (supply === undefined) return known;
  if (doubt === 'coilBeyondSupply') return [part('supplySide', supply)];
  if (coilUnread || doubt === 'coilUnplaced') return [...known, part('supplySide', supply)];
  return [...known, part('supplyDucts', without(supply, coil), data.statics.supplyDucts)];
}

function doubtOf(of: {
  readonly back: Amount | undefined;
  readonly supply: Amount | undefined;
  readonly filter: Amount | undefined;
  readonly coil: Amount | undefined;
  readonly coilBefore: Amount | undefined;
  readonly coilAfter: Amount | undefined;
  readonly coilIn: string | undefined;
}): Doubt | undefined {
  if (of.back !== undefined && beyond(of.filter, of.back)) return 'filterBeyondReturn';
  if (of.back !== undefined && beyond(of.coilBefore, without(of.back, of.filter))) return 'coilBeyondReturn';
  if (of.supply !== undefined && beyond(of.coilAfter, of.supply)) return 'coilBeyondSupply';
  return of.coil !== undefined && of.coilIn === undefined ? 'coilUnplaced' : undefined;
}

function beyond(inside: Amount | undefined, side: Amount): boolean {
  if (inside === undefined) return false;
  return inside.value - side.value > data.statics.conflictSigmas.value * Math.hypot(inside.sd, side.sd);
}

function sized(found: Sourced | undefined): Amount | undefined {
  return found === undefined ? undefined : { value: Math.abs(found.value), sd: found.sd };
}

function sum(a: Amount, b: Amount): Amount {
  return { value: a.value + b.value, sd: Math.hypot(a.sd, b.sd) };
}

/** What is left of a side; within the instruments' uncertainty it may be nothing, never less. */
function without(side: Amount, inside: Amount | undefined): Amount {
  if (inside === undefined) return side;
  return { value: Math.max(0, side.value - inside.value), sd: Math.hypot(side.sd, inside.sd) };
}

function part(id: StaticPartId, { value, sd }: Amount, usual?: Usual): StaticPart {
  if (usual === undefined) return { id, inWc: value, sdInWc: sd };
  const verdict: Verdict = value > usual.high + 1e-9 ? 'above' : 'within';
  return {
    id,
    inWc: value,
    sdInWc: sd,
    usualInWc: { low: usual.low, high: usual.high },
    verdict,
    source: usual.source,
  };
}
