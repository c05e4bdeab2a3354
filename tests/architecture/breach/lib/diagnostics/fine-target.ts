export type Of = 'diagnostics';
