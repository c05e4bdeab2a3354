export type Of = 'visit';
