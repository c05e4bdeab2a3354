/** Where a number came from; it travels with the number to the sheet. */
export type Basis = 'measured' | 'nameplate' | 'bill' | 'assumed';
