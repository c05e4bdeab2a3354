export type Of = 'finance';
