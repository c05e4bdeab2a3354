import type { Saying } from '../visit/wording';
import type { Climate } from './climate-model';
import defaults from './data/load-defaults.json';

export type OwnDegreeDays = {
  /** Heating and cooling degree-days to 65 F of the user's own place or years. */
  readonly hdd65Fday?: number | undefined;
  readonly cdd65Fday?: number | undefined;
};

const BASE_F = 65;

/**
 * A typical year brought to the user's own degree-days: temperatures below 65 F are drawn towards or away from it
 * until heating degree-days match, those above likewise for cooling. Typical years are often colder than now.
 *
 * @param climate  with its own degree-days; without them nothing can be corrected
 * @param own      the user's degree-days; they win
 * @returns corrected climate with a note; hours stay as they were
 * Beyond the factors of data/load-defaults.json `degreeDayFactor`: held there, with a note.
 * Source: degree-days are linear in the distance from their base; computed
 * Check: tests/energy/degree-day-correction.test.ts
 */
export function withDegreeDays(climate: Climate, own: OwnDegreeDays): Climate {
  const notes: Saying[] = [];
  const cold = factorOf(own.hdd65Fday, climate.hdd65Fday, 'heating', notes);
  const warm = factorOf(own.cdd65Fday, climate.cdd65Fday, 'cooling', notes);
  const moved = (f: number): number => {
    const factor = f < BASE_F ? cold : warm;
    return factor === 1 ? f : BASE_F + (f - BASE_F) * factor;
  };
  const { monthMeanF, ...rest } = climate;
  return {
    ...rest,
    binF: climate.binF.map(moved),
    heatingDesignF: moved(climate.heatingDesignF),
    coolingDesignF: moved(climate.coolingDesignF),
    ...(climate.hdd65Fday === undefined ? {} : { hdd65Fday: climate.hdd65Fday * cold }),
    ...(climate.cdd65Fday === undefined ? {} : { cdd65Fday: climate.cdd65Fday * warm }),
    ...(monthMeanF === undefined ? {} : { monthMeanF: monthMeanF.map(moved) }),
    notes: [...climate.notes, ...notes],
  };
}

function factorOf(
  own: number | undefined,
  file: number | undefined,
  mode: 'heating' | 'cooling',
  notes: Saying[],
): number {
  if (own === undefined) return 1;
  if (file === undefined || file <= 0) {
    notes.push({ code: 'degreeDaysUnusable', values: { mode } });
    return 1;
  }
  const { least, most } = defaults.degreeDayFactor;
  const wanted = own / file;
  const factor = Math.min(most, Math.max(least, wanted));
  const code = factor === wanted ? 'degreeDaysUsed' : 'degreeDaysHeld';
  notes.push({ code, values: { mode, own, typical: Math.round(file) } });
  return factor;
}
