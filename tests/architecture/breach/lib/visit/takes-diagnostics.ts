export type { Of } from '../diagnostics/fine-target';
