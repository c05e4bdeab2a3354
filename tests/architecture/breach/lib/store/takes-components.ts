export type { Part } from '@/components/fine-target';
