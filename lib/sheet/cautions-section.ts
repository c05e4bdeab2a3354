import limits from '../diagnostics/data/limits.json';
import type { ComparedChoice } from '../finance/comparison';
import { type Composing, enteredChoice } from './composing';

import { isZeroMoney } from './money-words';
import { dateWords, listWords, phrase } from './phrase';
import type { Sheet } from './sheet';

/**
 * Safety lines that apply to this unit.
 *
 * @param renews  true when a new unit is among the choices
 */
export function cautionsSection(
  { words, visit }: Pick<Composing, 'words' | 'visit'>,
  renews: boolean,
): Sheet['pageTwo']['cautions'] {
  const refrigerant = visit.unit.refrigerant;
  const burns = refrigerant !== undefined && limits.flammable.names.includes(refrigerant);
  return {
    title: phrase(words, 'cautions.title'),
    sentences: [
      phrase(words, 'caution.refrigerant'),
      phrase(words, 'caution.voltage'),
      phrase(words, 'caution.pressure'),
      ...(burns ? [phrase(words, 'caution.a2l', { name: refrigerant })] : []),
      ...(renews && !burns ? [phrase(words, 'caution.a2lNew')] : []),
      ...(visit.site.otherHeat === true ? [phrase(words, 'caution.combustion')] : []),
      phrase(words, 'caution.permit'),
    ],
  };
}

/** What the totals leave out, and which price lacks a usual line. */
export function excludedSection(c: Composing): Sheet['pageTwo']['excluded'] {
  const { words } = c;
  const bought = c.comparison.choices.filter((choice) => choice.kind !== 'leave');
  const lacking = (missing: (choice: ComparedChoice) => boolean) =>
    bought.filter(missing).map((choice) => choice.name);
  const unpriced = lacking((choice) => isZeroMoney(choice.priceUsd));
  const noPermit = lacking((choice) => !isZeroMoney(choice.priceUsd) && !hasLine(c, choice.id, 'permit'));
  const noTax = lacking((choice) => !isZeroMoney(choice.priceUsd) && !hasLine(c, choice.id, 'tax'));
  const line = (
    stem: 'excluded.noPrice' | 'excluded.noPermit' | 'excluded.noTax',
    names: readonly string[],
  ) => {
    if (names.length === 0) return [];
    if (names.length === bought.length) return [phrase(words, `${stem}.any`)];
    return [phrase(words, `${stem}.some`, { names: listWords(words, names) })];
  };
  return {
    title: phrase(words, 'excluded.title'),
    sentences: [
      phrase(words, 'excluded.general'),
      ...line('excluded.noPrice', unpriced),
      ...line('excluded.noPermit', noPermit),
      ...line('excluded.noTax', noTax),
      phrase(words, 'excluded.comfort'),
      phrase(words, 'excluded.fixed'),
    ],
  };
}

function hasLine(c: Composing, id: string, kind: 'permit' | 'tax'): boolean {
  return enteredChoice(c, id)?.priceLines.some((line) => line.kind === kind) ?? false;
}

/** Until when the prices hold: nobody has said, so there is a line to fill in. */
export function validitySection(c: Composing): Sheet['pageTwo']['validity'] {
  return {
    title: phrase(c.words, 'validity.title'),
    line: phrase(c.words, 'validity.line', { date: dateWords(c.words, c.visit.visitDate) }),
  };
}

/** Boxes and lines to sign; nothing is ticked. */
export function signatureSection(c: Composing): Sheet['pageTwo']['signature'] {
  const { words } = c;
  return {
    title: phrase(words, 'sign.title'),
    choose: phrase(words, 'sign.choose'),
    choices: c.comparison.choices.map((choice) => choice.name),
    told: phrase(words, 'sign.told'),
    customer: phrase(words, 'sign.customer'),
    company: phrase(words, 'sign.company'),
    date: phrase(words, 'sign.date'),
  };
}
