export type Of = 'math';
