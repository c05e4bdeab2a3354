import { propagateOrNone } from '../math/propagate';
import type { Basis } from '../visit/basis';
import type { DerivedInput, DerivedValue } from './findings';
import type { Sourced } from './sourced';

export type Derivation<K extends string> = {
  readonly id: string;
  readonly unit: string;
  /** In trade notation, for people. */
  readonly formula: string;
  readonly source: string;
  /** One absent input makes the value absent. */
  readonly inputs: Readonly<Record<K, Sourced | undefined>>;
  /** NaN where no value exists (pressure beyond the table, liquid in the suction line). */
  readonly compute: (values: Readonly<Record<K, number>>) => number;
};

/**
 * A derived value with its standard uncertainty, propagated from every input.
 *
 * @param derivation  inputs, formula and computation
 * @returns the value, or undefined when an input is absent or no value exists at the readings; never NaN
 * An input whose uncertainty leaves the range of the computation on both sides makes the value absent.
 * Basis: `measured` while readings carry the result; `assumed` when there are none, or when assumptions bring more
 * than half of the variance and leave the value uncertain by more than a tenth.
 * Source: JCGM 100:2008 (GUM) 5.1.2, through lib/math/propagate, status memory
 * Check: tests/diagnostics/derive.test.ts
 */
export function derive<K extends string>(derivation: Derivation<K>): DerivedValue | undefined {
  const { id, unit, formula, source, compute } = derivation;
  const keys = Object.keys(derivation.inputs) as K[];
  const inputs: [K, Sourced][] = [];
  for (const key of keys) {
    const input = derivation.inputs[key];
    if (input === undefined) return undefined;
    inputs.push([key, input]);
  }
  const found = propagateOrNone(compute, derivation.inputs as Readonly<Record<K, Sourced>>);
  if ('why' in found) return undefined;
  const { value, sd, shareFrac } = found;
  return {
    id,
    value,
    sd,
    unit,
    basis: basisOf(inputs, shareFrac, Math.abs(sd / value)),
    inputs: inputs.map(([key, input]) => asInput(input, shareFrac[key])),
    formula,
    source,
  };
}

function basisOf<K extends string>(
  inputs: readonly (readonly [K, Sourced])[],
  shareFrac: Readonly<Record<K, number>>,
  relativeSd: number,
): Basis {
  const assumedShare = inputs.reduce(
    (sum, [key, input]) => sum + (input.basis === 'assumed' ? shareFrac[key] : 0),
    0,
  );
  if (assumedShare > 0.5 && Math.sqrt(assumedShare) * relativeSd > 0.1) return 'assumed';
  if (inputs.some(([, input]) => input.basis === 'measured')) return 'measured';
  return inputs.some(([, input]) => input.basis === 'assumed') ? 'assumed' : 'nameplate';
}

function asInput(input: Sourced, shareFrac: number): DerivedInput {
  return {
    name: input.name,
    value: input.value,
    unit: input.unit,
    basis: input.basis,
    sd: input.sd,
    shareFrac,
    ...(input.source === undefined ? {} : { source: input.source }),
  };
}

/** A derived value used as an input of another one; its own inputs stay visible under its id. */
export function asSourced(value: DerivedValue | undefined): Sourced | undefined {
  if (value === undefined) return undefined;
  const { id, sd, unit, basis, source } = value;
  return { name: id, value: value.value, sd, unit, basis, source };
}
