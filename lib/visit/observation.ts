import { z } from 'zod';
import { text } from './quantity';

export const ObservationId = z
  .enum([
    'dirtyFilter',
    'noFilterDrier',
    'closedRegisters',
    'oilStain',
    'refrigerantAddedBefore',
    'dirtyIndoorCoil',
    'dirtyOutdoorCoil',
    'dirtyBlowerWheel',
    'frostOnSuctionLine',
    'icedOutdoorCoil',
    'frostOnLiquidLine',
    'noisyCompressor',
    'neverKeepsUp',
    'stripsStayOn',
    'shortToGround',
    'burntSmell',
    'breakerTrips',
    'other',
  ])
  .meta({ label: 'Observation' });
export type ObservationId = z.infer<typeof ObservationId>;

/** Something seen, not measured. */
export const Observation = z.strictObject({
  id: ObservationId,
  note: text('Note on the observation', 2_000).optional(),
});
export type Observation = z.infer<typeof Observation>;
