/**
 * Exact definitions at the edge between SI (equations of state) and the trade's units (tables, readings).
 * Source: NIST SP 811 (2008), appendix B, status memory; the Btu is the international table Btu.
 * Check: tests/diagnostics/refrigerant/helmholtz.test.ts, which compares columns given in both systems.
 */
export const PA_PER_PSI = 6894.757293168361;
export const J_PER_BTU = 1055.05585262;
export const KG_PER_LB = 0.45359237;
export const M_PER_FT = 0.3048;
export const RANKINE_AT_0F = 459.67;

/** [J/kg] per [Btu/lb] */
export const J_KG_PER_BTU_LB = J_PER_BTU / KG_PER_LB;
/** [J/(kg K)] per [Btu/(lb R)] */
export const J_KGK_PER_BTU_LBR = (J_PER_BTU / KG_PER_LB) * 1.8;
/** [kg/m3] per [lb/ft3] */
export const KG_M3_PER_LB_FT3 = KG_PER_LB / M_PER_FT ** 3;

/** Temperature, not a difference: [F] to [K]. */
export function kFromF(temperatureF: number): number {
  return (temperatureF + RANKINE_AT_0F) / 1.8;
}

/** Temperature, not a difference: [K] to [F]. */
export function fFromK(temperatureK: number): number {
  return temperatureK * 1.8 - RANKINE_AT_0F;
}
