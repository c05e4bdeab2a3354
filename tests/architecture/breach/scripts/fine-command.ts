import type { Part } from '../components/fine-target';
import type { Of } from '../lib/appraise/fine-target';
import type { Kept } from '../lib/store/fine-target';

export type Uses = Part | Of | Kept;
