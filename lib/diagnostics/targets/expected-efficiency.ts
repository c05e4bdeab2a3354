import { interpolateLinear } from '../../math/interpolate';
import type { Uncertain } from '../../math/propagate';
import type { RefrigerantName } from '../../visit/refrigerant-names';
import data from '../data/compressor-efficiency.json';

/**
 * Isentropic efficiency to expect of a healthy compressor, as the refrigerant sees it. It follows the compression
 * ratio, so that heating in the cold does not look like a bad compressor.
 *
 * @param refrigerant  tells the usual compressor type
 * @param ratio        compression ratio of absolute pressures, > 1; held at 1.5..7.2 outside
 * @param shellLossFrac share of electric power lost through the shell, 0..0.5
 * @returns (h_2s - h_1) / (h_2 - h_1) and its spread between types
 * Source: data/compressor-efficiency.json: shape computed from a published map, level memory
 * Check: tests/diagnostics/targets/expected-efficiency.test.ts
 */
export function expectedEfficiency(
  refrigerant: RefrigerantName,
  ratio: number,
  shellLossFrac: number,
): Uncertain {
  const electric = interpolateLinear(data.ratio, data.electricFrac, ratio).value;
  const type = data.byRefrigerant[refrigerant] as keyof typeof data.levelFrac;
  const level = data.levelFrac[type].value;
  return { value: (electric * level) / (1 - shellLossFrac), sd: data.sdFrac.value };
}

/** Window outside which no residential compressor works. Source: data/compressor-efficiency.json */
export const plausibleEfficiency: { readonly low: number; readonly high: number } = data.plausible;
