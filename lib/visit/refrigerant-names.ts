import { z } from 'zod';

/** Refrigerants the property tables cover; adding one is a data file and a line here. */
export const RefrigerantName = z
  .enum(['R-22', 'R-410A', 'R-407C', 'R-32', 'R-454B', 'R-134a'])
  .meta({ label: 'Refrigerant' });
export type RefrigerantName = z.infer<typeof RefrigerantName>;
