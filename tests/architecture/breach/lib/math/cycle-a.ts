import type { B } from './cycle-b';

export type A = B | 'a';
