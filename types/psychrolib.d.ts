// psychrolib ships JavaScript without types; only the functions this project calls are declared.
declare module 'psychrolib' {
  export const IP: number;
  export const SI: number;
  export function SetUnitSystem(system: number): void;
  export function GetHumRatioFromTWetBulb(tDryBulb: number, tWetBulb: number, pressure: number): number;
  export function GetHumRatioFromRelHum(tDryBulb: number, relHum: number, pressure: number): number;
  export function GetTWetBulbFromRelHum(tDryBulb: number, relHum: number, pressure: number): number;
  export function GetTWetBulbFromHumRatio(tDryBulb: number, humRatio: number, pressure: number): number;
  export function GetRelHumFromTWetBulb(tDryBulb: number, tWetBulb: number, pressure: number): number;
  export function GetMoistAirEnthalpy(tDryBulb: number, humRatio: number): number;
  export function GetMoistAirVolume(tDryBulb: number, humRatio: number, pressure: number): number;
  export function GetStandardAtmPressure(altitude: number): number;
}
