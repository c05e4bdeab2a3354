export type { Of } from '../energy/fine-target';
