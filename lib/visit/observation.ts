import { z } from 'zod';
import { MAX_PHOTOS } from './max-photos';
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
    'burntWires',
    'bulgedCapacitor',
    'compressorKnocks',
    'frozenIndoorCoil',
    'blowerNotRunning',
    'escapingRefrigerant',
    'carbonMonoxideAlarm',
    'other',
  ])
  .meta({ label: 'Observation' });
export type ObservationId = z.infer<typeof ObservationId>;

/** Something seen, not measured. */
export const Observation = z.strictObject({
  id: ObservationId,
  /** Names of photos; the pictures themselves stay on the device that took them. */
  photoIds: z
    .array(
      z
        .string()
        .regex(/^[a-z0-9-]{1,60}$/)
        .meta({ label: 'Photo' }),
    )
    .max(MAX_PHOTOS)
    .optional(),
  note: text('Note on the observation', 2_000).optional(),
});
export type Observation = z.infer<typeof Observation>;
