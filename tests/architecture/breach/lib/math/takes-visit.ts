export type { Of } from '../visit/fine-target';
