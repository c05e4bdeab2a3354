export type Of = 'energy';
