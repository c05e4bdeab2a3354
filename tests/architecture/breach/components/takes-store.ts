export type { Kept } from '@/lib/store/fine-target';
