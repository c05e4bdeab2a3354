/** Element id of a field of the visit, so that an error can link to it. */
export function fieldId(path: string): string {
  return `field-${path}`;
}

/** Path of the field an address points to ("#field-runs.0.suctionPsig"). */
export function pathOfHash(hash: string): string | undefined {
  return hash.startsWith('#field-') ? decodeURIComponent(hash.slice('#field-'.length)) : undefined;
}
