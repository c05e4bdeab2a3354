import { type Composing, leaveChoice, namesInQuotes, scenario, stayWords, told } from './composing';
import { isDanger } from './finding-section';
import { dollarWords, moneyRangeWords, savingWords } from './money-words';
import { listWords, phrase } from './phrase';
import { extraCost } from './running-cost-section';
import type { Sheet } from './sheet';

/** Recommendation with its reason and what would change it; or that choices cost about the same. Safety comes last, to be kept in mind. */
export function adviceSection(c: Composing): Sheet['pageOne']['advice'] {
  const advice = moneyAdvice(c);
  const safety = isUnsafe(c) ? [phrase(c.words, 'advice.safety')] : [];
  return { ...advice, sentences: [...advice.sentences, ...safety] };
}

function moneyAdvice(c: Composing): Sheet['pageOne']['advice'] {
  const { words, comparison } = c;
  const { choiceId, reason, wouldChange } = comparison.recommendation;
  const title = phrase(words, 'advice.title');
  const rest = {
    changeTitle: phrase(words, 'advice.change'),
    wouldChange: wouldChange.map((s) => told(c, s)),
  };
  if (choiceId !== undefined) {
    const name = c.names.choice(choiceId) ?? choiceId;
    const fault =
      isUnsafe(c) && choiceId === leaveChoice(c)?.id ? [phrase(words, 'advice.leavingFault')] : [];
    const sentences = [phrase(words, 'advice.recommended', { name }), reasonWords(c, choiceId), ...fault];
    return { title, kind: 'recommended', sentences, ...rest };
  }
  const alike = aboutTheSame(c);
  if (alike.length > 1) {
    return {
      title,
      kind: 'aboutTheSame',
      sentences: alikeSentences(c, alike),
      changeTitle: rest.changeTitle,
      wouldChange: wouldChange.filter((s) => !settledSayings.includes(s.code)).map((s) => told(c, s)),
    };
  }
  const sentences =
    comparison.choices.length < 2
      ? [phrase(words, 'advice.onlyOne')]
      : [phrase(words, 'advice.open'), told(c, reason)];
  return { title, kind: 'open', sentences, ...rest };
}

/** Sayings that call one choice the cheapest outright: they would contradict that several cost about the same. */
const settledSayings = ['anyStay', 'repairStaysBelow'];

/** Which cost about the same and which is lowest on the likely numbers; leaving a danger is never one of the equals. */
function alikeSentences(c: Composing, alike: readonly string[]): string[] {
  const { words } = c;
  const unsafe = isUnsafe(c);
  const leaveId = leaveChoice(c)?.id;
  const equals = unsafe ? alike.filter((id) => id !== leaveId) : alike;
  const names = listWords(words, namesInQuotes(c, equals));
  const { lowestOnLikely } = c.comparison.recommendation;
  const leftFault = unsafe && equals.length < alike.length ? [phrase(words, 'advice.leavingFault')] : [];
  return [
    phrase(words, equals.length > 1 ? 'advice.same' : 'advice.sameAsLeaving', { names }),
    ...(lowestOnLikely === undefined ? [] : [told(c, lowestOnLikely)]),
    ...(unsafe ? leftFault : [phrase(words, 'advice.choose')]),
  ];
}

/** Why: by how much it costs less than leaving it (or, if leaving it is advised, than the next best), as a range. */
function reasonWords(c: Composing, choiceId: string): string {
  const { choices } = c.comparison;
  const chosen = choices.find((choice) => choice.id === choiceId);
  const leave = leaveChoice(c);
  const others = choices.filter((choice) => choice.id !== choiceId && choice.priced);
  const against = chosen?.kind === 'leave' || leave === undefined ? cheapest(others) : leave;
  if (chosen === undefined || against === undefined) return told(c, c.comparison.recommendation.reason);
  const saving = chosen.kind === 'leave' ? against.overLowestUsd : chosen.netSavingUsd;
  return phrase(c.words, 'advice.costsLeast', {
    stay: stayWords(c),
    saving: savingWords(c.words, saving),
    against: against.name,
  });
}

/** Ids of the choices that cost about the same as the cheapest, the cheapest among them, in the table's order. */
export function aboutTheSame(c: Composing): string[] {
  const { choices, lowestTotalId, aboutTheSameIds } = c.comparison;
  return choices
    .map((choice) => choice.id)
    .filter((id) => id === lowestTotalId || aboutTheSameIds.includes(id));
}

/** What a year of waiting costs in running cost, against the choice one would otherwise take. */
export function waitingSection(c: Composing): Sheet['pageOne']['waiting'] {
  const title = phrase(c.words, 'waiting.title');
  const leave = leaveChoice(c);
  const others = c.comparison.choices.filter((choice) => choice.kind !== 'leave');
  const other =
    others.find((choice) => choice.id === c.comparison.recommendation.choiceId) ?? cheapest(others);
  if (leave === undefined || other === undefined)
    return { title, sentences: [phrase(c.words, 'waiting.none')] };
  const sentences = [
    ...noHurryWords(c, leave.id),
    runningCostOfWaiting(c, other.id),
    phrase(c.words, 'waiting.price'),
  ];
  return { title, sentences };
}

/** That leaving it costs little; never that there is no hurry while something is unsafe. */
function noHurryWords(c: Composing, leaveId: string): string[] {
  const stay = stayWords(c);
  const unsafe = isUnsafe(c);
  if (c.comparison.recommendation.choiceId === leaveId) {
    return [phrase(c.words, unsafe ? 'waiting.cheapestUnsafe' : 'waiting.cheapest', { stay })];
  }
  if (!aboutTheSame(c).includes(leaveId)) return [];
  return [phrase(c.words, unsafe ? 'waiting.alikeUnsafe' : 'waiting.alike', { stay })];
}

function isUnsafe(c: Composing): boolean {
  return c.findings.flags.some((flag) => isDanger(c, flag));
}

function cheapest<T extends { readonly totalTodayUsd: { readonly likely: number } }>(
  choices: readonly T[],
): T | undefined {
  return choices.reduce<T | undefined>(
    (best, choice) =>
      best === undefined || choice.totalTodayUsd.likely < best.totalTodayUsd.likely ? choice : best,
    undefined,
  );
}

function runningCostOfWaiting(c: Composing, otherId: string): string {
  const extra = extraCost(
    scenario(c, leaveChoice(c)?.id ?? 'asFound') ?? scenario(c, 'asFound'),
    scenario(c, otherId),
  );
  const name = c.names.choice(otherId) ?? otherId;
  if (extra === undefined) return phrase(c.words, 'waiting.unknown');
  const { usd } = moneyRangeWords(c.words, extra);
  const ends = (low: number, high: number) => ({ low: dollar(c, low), high: dollar(c, high), name });
  if (usd.low === 0 && usd.high === 0) return phrase(c.words, 'waiting.same', { name });
  if (usd.low > 0) return phrase(c.words, 'waiting.extra', ends(usd.low, usd.high));
  if (usd.low === 0 && usd.high > 0) return phrase(c.words, 'waiting.little', ends(usd.low, usd.high));
  if (usd.high <= 0) return phrase(c.words, 'waiting.less', ends(-usd.high, -usd.low));
  return phrase(c.words, 'waiting.either', { more: dollar(c, usd.high), less: dollar(c, -usd.low), name });
}

function dollar(c: Composing, usd: number): string {
  return dollarWords(c.words, usd);
}
