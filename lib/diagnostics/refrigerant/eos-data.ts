import type { RefrigerantName } from '../../visit/refrigerant-names';
import r22 from './data/eos/R-22.json';
import r32 from './data/eos/R-32.json';
import r134a from './data/eos/R-134a.json';
import r407c from './data/eos/R-407C.json';
import r410a from './data/eos/R-410A.json';
import r454b from './data/eos/R-454B.json';

/** One fitted saturation curve of a coefficient file; its formula is written out in the file under `form`. */
export type AncillaryData = {
  readonly form: string;
  readonly T_ref_K: number;
  readonly value_ref: number;
  readonly multiplyByTrefOverT: boolean;
  readonly terms: readonly (readonly number[])[];
};

/** A published equation of state as stored: SI, molar. `form` in each file says what the columns mean. */
export type EosData = {
  readonly refrigerant: string;
  readonly kind: string;
  readonly gasConstant_J_molK: number;
  readonly molarMass_kg_mol: number;
  readonly reducing: { readonly T_K: number; readonly rho_mol_m3: number };
  readonly critical?: { readonly T_K: number; readonly p_Pa: number };
  readonly valid: { readonly T_min_K: number; readonly T_max_K: number };
  readonly ideal: {
    readonly a1: number;
    readonly a2: number;
    readonly logTau: number;
    readonly power: readonly (readonly number[])[];
    readonly einstein: readonly (readonly number[])[];
  };
  readonly residual: {
    readonly power: readonly (readonly number[])[];
    readonly gaussian: readonly (readonly number[])[];
  };
  readonly saturationAncillaries: {
    readonly p_sat_Pa?: AncillaryData;
    readonly p_bubble_Pa?: AncillaryData;
    readonly p_dew_Pa?: AncillaryData;
    readonly rho_liquid_mol_m3: AncillaryData;
    readonly rho_vapour_mol_m3: AncillaryData;
  };
};

/** Every refrigerant with its equation of state. Read by table generation, tests and benches, never at run time. */
export const eosData: Readonly<Record<RefrigerantName, EosData>> = {
  'R-22': r22,
  'R-410A': r410a,
  'R-407C': r407c,
  'R-32': r32,
  'R-454B': r454b,
  'R-134a': r134a,
};
