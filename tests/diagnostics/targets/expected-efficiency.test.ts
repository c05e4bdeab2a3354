import { describe, expect, it } from 'vitest';
import data from '@/lib/diagnostics/data/compressor-efficiency.json';
import { refrigerantProperties } from '@/lib/diagnostics/refrigerant/properties';
import { expectedEfficiency, plausibleEfficiency } from '@/lib/diagnostics/targets/expected-efficiency';
import { interpolateLinear } from '@/lib/math/interpolate';
import map from '../../reference/cycle-compressor-map.json';
import '../support/matchers';

describe('efficiency to expect of a healthy compressor', () => {
  // A published 3-ton R-410A map, 49 points. As one curve of compression ratio it is met within 0.03 (0.02 below a
  // ratio of 5; the map's corner at 10 F evaporating is outside a compressor's usual envelope).
  it('outside: the curve follows the published map over compression ratio', () => {
    const p = refrigerantProperties('R-410A');
    const misses = map.evaporatingF.flatMap((evaporatingF, i) =>
      map.condensingF.map((condensingF, j) => {
        const ratio = Number(p.dewPsia(condensingF)) / Number(p.dewPsia(evaporatingF));
        const curve = interpolateLinear(data.ratio, data.electricFrac, ratio).value;
        return curve - (map.electricFrac[i]?.[j] ?? Number.NaN);
      }),
    );
    expect(misses).toHaveLength(49);
    expect(Math.max(...misses.map(Math.abs))).toBeLessThan(0.03);
  });

  it('identity: shell loss raises what the refrigerant sees above the electric efficiency', () => {
    const without = expectedEfficiency('R-410A', 2.5, 0).value;
    expect(expectedEfficiency('R-410A', 2.5, 0.08).value).toBeCloseToWithin(without / 0.92, 1e-12);
    expect(without).toBeCloseToWithin(0.72 * 0.95, 1e-12);
  });

  it('identity: cold-weather ratios expect less, so heating does not look like a bad compressor', () => {
    const at = (ratio: number) => expectedEfficiency('R-410A', ratio, 0.08).value;
    expect(at(2.6)).toBeGreaterThan(at(4));
    expect(at(4)).toBeGreaterThan(at(5.5));
    expect(at(8)).toBe(at(7.2));
  });

  // The check cycles were made up to be realistic: 0.60-0.69 in cooling and heating. All within two sigma.
  it.each([
    ['R-22', 3.079, 0.6516],
    ['R-410A', 2.624, 0.6809],
    ['R-410A', 4.271, 0.6192],
    ['R-32', 3.644, 0.6618],
  ] as const)('outside: %s at ratio %f: efficiency %f is ordinary', (name, ratio, efficiency) => {
    const { value, sd } = expectedEfficiency(name, ratio, 0.07);
    expect(efficiency).toBeCloseToWithin(value, 2 * sd);
  });

  it('identity: the plausible window is that of residential compressors', () => {
    expect(plausibleEfficiency).toMatchObject({ low: 0.35, high: 0.85 });
  });
});
