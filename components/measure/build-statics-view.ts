import { t, tCode } from '@/components/words/words';
import type { StaticBudget, StaticPart } from '@/lib/diagnostics/measuring/measuring';
import { wordsOf } from '@/lib/sheet/phrase';
import { quantityRangeWords, quantityWords } from '@/lib/sheet/reading-words';
import type { StaticRow, StaticsView } from './view';

const words = wordsOf('en');
const UNIT = 'in. w.c.';
const said = (inWc: number) => quantityWords(words, inWc, UNIT);

/** The static-pressure budget in words; bars share one scale, the longer of total and limit. */
export function staticsView(budget: StaticBudget): StaticsView {
  const { totalInWc, limitInWc, verdict } = budget;
  const parts = [...budget.parts, ...(budget.coilApart === undefined ? [] : [budget.coilApart])];
  const longest = Math.max(totalInWc ?? 0, limitInWc, ...parts.map((part) => part.inWc));
  const limit = tCode(`measure.statics.limit.${budget.limitFrom}`);
  return {
    rows: parts.map((part) => rowOf(part, longest)),
    ...(totalInWc === undefined
      ? {}
      : {
          total: {
            id: 'total',
            name: t('measure.statics.total'),
            value: said(totalInWc),
            usual: t('measure.statics.upTo', { limit: said(limitInWc) }),
            off: verdict !== 'within',
            lengthFrac: totalInWc / longest,
            limitFrac: limitInWc / longest,
          },
        }),
    limit: t('measure.statics.limitIs', { limit: said(limitInWc), from: limit }),
    says: saysOf(budget, parts),
    off: verdict === 'overLimit' || verdict === 'overRated' || parts.some((part) => part.verdict === 'above'),
    sources: [...new Set(parts.flatMap((part) => part.source ?? []))],
    line: lineOf(budget, parts),
  };
}

function rowOf(part: StaticPart, longest: number): StaticRow {
  return {
    id: part.id,
    name: tCode(`measure.statics.part.${part.id}`),
    value: said(part.inWc),
    ...(part.shareFrac === undefined ? {} : { share: quantityWords(words, part.shareFrac, 'frac') }),
    ...(part.usualInWc === undefined
      ? {}
      : {
          usual: t('measure.statics.usual', {
            range: quantityRangeWords(words, part.usualInWc.low, part.usualInWc.high, UNIT),
          }),
        }),
    off: part.verdict === 'above',
    lengthFrac: part.inWc / longest,
  };
}

function saysOf(budget: StaticBudget, parts: readonly StaticPart[]): string[] {
  const { totalInWc, limitInWc, acceptedInWc, verdict, largest, doubt } = budget;
  const most = parts.find((part) => part.id === largest);
  return [
    ...(verdict === undefined || totalInWc === undefined
      ? [t('measure.statics.needsBoth')]
      : [
          tCode(`measure.statics.${budget.limitFrom}.${verdict}`)
            .replace('{total}', said(totalInWc))
            .replace('{limit}', said(limitInWc))
            .replace('{accepted}', said(acceptedInWc)),
        ]),
    ...(most === undefined
      ? []
      : [
          t('measure.statics.most', {
            part: tCode(`measure.statics.part.${most.id}`),
            value: said(most.inWc),
            share: quantityWords(words, most.shareFrac ?? 0, 'frac'),
          }),
        ]),
    ...parts
      .filter((part) => part.verdict === 'above')
      .map((part) => tCode(`measure.statics.says.${part.id}`)),
    ...(doubt === undefined ? [] : [tCode(`measure.statics.doubt.${doubt}`)]),
  ];
}

function lineOf({ totalInWc, limitInWc, verdict }: StaticBudget, parts: readonly StaticPart[]): string {
  if (totalInWc !== undefined) {
    const over = verdict === 'within' ? 'measure.statics.lineWithin' : 'measure.statics.lineOver';
    return t(over, { total: said(totalInWc), limit: said(limitInWc) });
  }
  const above = parts.find((part) => part.verdict === 'above') ?? parts[0];
  return above === undefined
    ? ''
    : t('measure.statics.linePart', {
        part: tCode(`measure.statics.part.${above.id}`),
        value: said(above.inWc),
      });
}
