export type { Kept } from '../store/fine-target';
