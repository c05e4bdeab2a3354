export type Of = 'appraise';
