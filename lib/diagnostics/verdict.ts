/** How a reading stands to what is healthy or usual. */
export type Verdict = 'within' | 'above' | 'below';
