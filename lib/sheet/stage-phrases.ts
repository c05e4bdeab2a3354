import energyEn from '../energy/wording/en.json';
import financeEn from '../finance/wording/en.json';
import type { Phrases } from '../visit/wording';
import type { Locale } from './phrase';

/** Sentences of the earlier stages, by locale. */
export const stagePhrases: Readonly<Record<Locale, Phrases>> = { en: { ...energyEn, ...financeEn } };
