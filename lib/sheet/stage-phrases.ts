import diagnosticsEn from '../diagnostics/wording/en.json';
import energyEn from '../energy/wording/en.json';
import financeEn from '../finance/wording/en.json';
import type { Phrases } from '../visit/wording';
import type { Locale } from './phrase';

/** Sentences of the earlier stages, by locale; no two stages share a code (checked by tests/sheet/stage-words.test.ts). */
export const stagePhrases: Readonly<Record<Locale, Phrases>> = {
  en: curly({ ...diagnosticsEn, ...energyEn, ...financeEn }),
};

/** Straight quotation marks of the stages' sentences as printed ones. */
function curly(phrases: Phrases): Phrases {
  return Object.fromEntries(
    Object.entries(phrases).map(([code, text]) => [code, text.replace(/"([^"]*)"/g, '\u201c$1\u201d')]),
  );
}
