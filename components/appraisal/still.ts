/** A simulation waits until the draft has been still for this long, so that it delays no answer. */
export const STILL_MS = 250;
