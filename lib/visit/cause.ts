import { z } from 'zod';

/** Suspected faults; names are the trade's own words. */
export const CauseId = z
  .enum([
    'none',
    'lowCharge',
    'overcharge',
    'liquidLineRestriction',
    'meteringRestriction',
    'lowIndoorAirflow',
    'outdoorCoilFouled',
    'nonCondensables',
    'compressorValvesLeaking',
    'reversingValveLeaking',
    'runCapacitorWeak',
    'supplementaryHeatFault',
  ])
  .meta({ label: 'Suspected cause' });
export type CauseId = z.infer<typeof CauseId>;
