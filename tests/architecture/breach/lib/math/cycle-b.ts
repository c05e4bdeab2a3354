import type { A } from './cycle-a';

export type B = A | 'b';
