/** Letters in the drawings. */
export const PLOT_TEXT = { fill: 'var(--ink)', fontSize: 14 } as const;
