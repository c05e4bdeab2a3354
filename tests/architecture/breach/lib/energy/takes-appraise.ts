export type { Of } from '../appraise/fine-target';
