import { z } from 'zod';
import type { Of as D } from '../diagnostics/fine-target';
import type { Of as E } from '../energy/fine-target';
import type { Of as F } from '../finance/fine-target';
import type { Of as M } from '../math/fine-target';
import type { Of as S } from '../sheet/fine-target';
import type { Of as V } from '../visit/fine-target';

export type Line = D | E | F | M | S | V;
export const line = z.string();
