import effectsEn from '../diagnostics/fault-effects/wording/en.json';
import diagnosticsEn from '../diagnostics/wording/en.json';
import energyEn from '../energy/wording/en.json';
import financeEn from '../finance/wording/en.json';
import type { Phrases } from '../visit/wording';
import type { Locale } from './phrase';

/** Sentences of the earlier stages, by locale; no two stages share a code (checked by tests/sheet/stage-words.test.ts). */
export const stagePhrases: Readonly<Record<Locale, Phrases>> = {
  en: printed({ ...diagnosticsEn, ...under('effect', effectsEn), ...energyEn, ...financeEn }),
};

/** Codes of a part of a stage under the family they are asked for by. */
function under(family: string, phrases: Phrases): Phrases {
  return Object.fromEntries(Object.entries(phrases).map(([code, text]) => [`${family}.${code}`, text]));
}

/** The stages' sentences as they are printed: curly quotation marks, no line break before a percent sign. */
function printed(phrases: Phrases): Phrases {
  return Object.fromEntries(
    Object.entries(phrases).map(([code, text]) => [
      code,
      text.replace(/"([^"]*)"/g, '\u201c$1\u201d').replaceAll('} %', '}\u00a0%'),
    ]),
  );
}
