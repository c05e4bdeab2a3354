/** Longest logo kept in a visit, as text, and the largest picture: enough for a sheet's head. Our own limits. */
export const logoLimits = { characters: 60_000, widthPx: 640, heightPx: 240 } as const;
