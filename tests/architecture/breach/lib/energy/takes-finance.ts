export type { Of } from '../finance/fine-target';
