export type { Of } from '../sheet/fine-target';
