import { z } from 'zod';
import { contrastOnWhite, leastContrast } from './contrast';
import { logoLimits } from './logo-limits';
import { pngSize } from './png-size';
import { text } from './quantity';

const isColour = /^#[0-9a-f]{6}$/i;

/** A colour dark enough to be read on white paper. */
const accent = z
  .string()
  .max(7)
  .refine((colour) => isColour.test(colour) && contrastOnWhite(colour) >= leastContrast, {
    params: {
      code: 'notAllowed',
      limit: `a colour like #14506e with a contrast of at least ${leastContrast} to 1 on white paper`,
      fix: 'Take a darker shade: the form offers the nearest one that can be read.',
    },
  })
  .meta({ label: 'Company colour' });

/** A picture re-encoded by the form as PNG: no other bytes of the file are kept. */
const logo = z
  .string()
  .max(logoLimits.characters)
  .regex(/^data:image\/png;base64,[A-Za-z0-9+/]+=*$/)
  .refine(fitsSheetHead, {
    params: {
      code: 'notAllowed',
      limit: `a PNG picture of at most ${logoLimits.widthPx} by ${logoLimits.heightPx} dots`,
      fix: 'Choose the logo in the form, which makes it small enough.',
    },
  })
  .meta({ label: 'Company logo' });

function fitsSheetHead(dataUrl: string): boolean {
  const size = pngSize(dataUrl);
  return (
    size !== undefined &&
    size.widthPx > 0 &&
    size.heightPx > 0 &&
    size.widthPx <= logoLimits.widthPx &&
    size.heightPx <= logoLimits.heightPx
  );
}

/** Who signs the sheet, and its look; nothing of it is required. */
export const Company = z.strictObject({
  name: text('Company', 120).optional(),
  phone: text('Company phone', 40).optional(),
  licence: text('Licence number', 60).optional(),
  accent: accent.optional(),
  logo: logo.optional(),
});
export type Company = z.infer<typeof Company>;
