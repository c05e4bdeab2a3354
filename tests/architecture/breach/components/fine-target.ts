export type Part = 'part';
