export type Kept = 'draft';
