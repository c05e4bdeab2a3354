import { appraiseWith } from '../lib/appraise/appraise-with';
import { simulateVisit } from '../lib/appraise/simulate-visit';
import { climateFor } from '../lib/energy/climate';
import type { Choice } from '../lib/visit/choice';
import type { Visit } from '../lib/visit/visit';
import { demoVisits } from './bench-appraisal';
import { durationText, timeCalls } from './bench-timing';

const SEED = 7;
/** Draws, choices, years; the first is the target, the others show how it grows. */
const SIZES = [
  [10_000, 5, 20],
  [1_000, 5, 20],
  [40_000, 5, 20],
  [10_000, 2, 20],
  [10_000, 5, 10],
] as const;

/** A demo visit with a second replacement, so that there are five choices, and a stay of its own. */
function visitOf(folder: string, choices: number, stayYears: number): Visit {
  const found = demoVisits(folder).find(({ visit }) => visit.id === 'restricted-orifice')?.visit;
  if (found === undefined) throw new Error('no demo visit "restricted-orifice"');
  const more = found.choices.flatMap((c): Choice[] =>
    c.kind === 'replace' ? [{ ...c, id: `${c.id}-2`, name: `${c.name} 2`, tier: 'variableSpeed' }] : [],
  );
  const all = [...found.choices, ...more].slice(0, choices);
  return { ...found, site: { ...found.site, stayYears }, choices: all };
}

/**
 * The same arithmetic with nothing around it: for every draw the hazards and survival of new units, the renewal over
 * the years, and each choice's own years; filled from ready-made columns, written to typed arrays.
 */
function bareLoop(draws: number, choices: number, years: number): () => number {
  const column = Float64Array.from({ length: draws }, (_, n) => 1 + ((n * 2_654_435_761) % 1000) / 1e5);
  const survives = new Float64Array(years + 1);
  const prices = new Float64Array(years + 1);
  const after = new Float64Array(years + 1);
  const totals = Float64Array.from({ length: draws });
  return () => {
    let used = 0;
    for (let n = 0; n < draws; n += 1) {
      const x = column[n] as number;
      prices[0] = 1;
      survives[0] = 1;
      for (let t = 1; t <= years; t += 1) {
        prices[t] = (prices[t - 1] as number) * 0.97 * x;
        survives[t] = Math.exp(-Math.exp(3 * x * (Math.log(t) - 2.9)));
      }
      for (let s = years; s >= 1; s -= 1) {
        let sum = 0;
        for (let j = 1; s + j <= years; j += 1) {
          const alive = survives[j - 1] as number;
          const price = prices[s + j] as number;
          sum += alive * (190 * price + 1200 * price);
          sum += (alive - (survives[j] as number)) * (9900 * price + (after[s + j] as number));
        }
        after[s] = sum;
      }
      for (let c = 0; c < choices; c += 1) {
        let alive = 1;
        let sum = 0;
        for (let t = 1; t <= years; t += 1) {
          const still = Math.exp(-x * Math.exp(0.1 * t - 2));
          const price = prices[t] as number;
          sum += alive * (290 * price + 1800 * price);
          sum += (alive - still) * (9900 * price + (after[t] as number));
          alive = still;
        }
        totals[n] = sum;
        used += sum;
      }
    }
    return used;
  };
}

/**
 * Rows: size, whole simulation with the surfaces of the yearly cost, reading them and summing up, bare loop, ratio. The
 * random numbers are drawn in the first call and kept.
 */
export function benchFinance(folder: string): string[][] {
  return SIZES.map(([draws, choices, years]) => {
    const visit = visitOf(folder, choices, years);
    const climate = climateFor(visit.site.climate, visit.site.stateCode);
    const appraisal = appraiseWith(visit, climate);
    const whole = timeCalls(() => simulateVisit(appraisal, climate, draws, SEED).perfectInformationUsd);
    const bare = timeCalls(bareLoop(draws, choices, years));
    const ratio = whole.nsPerCall / bare.nsPerCall;
    return [
      `${draws} x ${choices} x ${years}`,
      durationText(whole.nsPerCall),
      durationText(bare.nsPerCall),
      `${ratio.toFixed(2)} x`,
    ];
  });
}
