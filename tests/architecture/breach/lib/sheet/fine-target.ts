export type Of = 'sheet';
