/** Most photos of one observation: more says no more, and a phone has little room. Our own limit. */
export const MAX_PHOTOS = 6;
