import type { Flag, Loss } from '../diagnostics/findings';
import type { Estimate } from '../math/estimate';
import { type Composing, scenario, told } from './composing';
import rules from './data/rounding.json';
import { counted, phrase } from './phrase';
import { roundToRange } from './round-to-range';
import type { Sheet } from './sheet';

/** What was found, in everyday words, with how sure; and whose judgement the cause is. */
export function findingSection(c: Composing): Sheet['pageOne']['finding'] {
  const sentences = [...lossSentences(c), ...causeSentences(c), ...unmetSentences(c)];
  return {
    title: phrase(c.words, 'finding.title'),
    sentences,
    dangers: c.findings.flags.filter((flag) => flag.severity === 'danger').map((flag) => flagWords(c, flag)),
  };
}

/** Words of a flag; they live under `flag.<code>` of the stage that raised it. */
export function flagWords(c: Composing, flag: Flag): string {
  return told(c, { ...flag, code: flag.code.startsWith('flag.') ? flag.code : `flag.${flag.code}` });
}

function lossSentences(c: Composing): string[] {
  const { heating, cooling } = c.findings.loss;
  const modes =
    c.visit.unit.kind === 'heatPump'
      ? ([
          ['heating', heating],
          ['cooling', cooling],
        ] as const)
      : ([['cooling', cooling]] as const);
  const sentences = modes.flatMap(([mode, loss]) =>
    loss === undefined ? [] : lossOfMode(c, phrase(c.words, `mode.${mode}`), loss),
  );
  if (sentences.length > 0) return sentences;
  const mode = c.visit.unit.kind === 'heatPump' ? 'heating' : 'cooling';
  return [phrase(c.words, 'finding.unknown', { what: phrase(c.words, `mode.${mode}`) })];
}

function lossOfMode(c: Composing, what: string, loss: Loss): string[] {
  const clear = loss.capacityRatioToHealthy.high < 1;
  const capacity = percentWords(loss.capacityRatioToHealthy);
  const first = phrase(c.words, clear ? 'finding.loss' : 'finding.noLoss', { what, ...capacity });
  const power = loss.powerRatioToHealthy;
  if (power.low <= 1) return [first];
  const more = percentWords({ low: power.low - 1, likely: power.likely - 1, high: power.high - 1 });
  return [first, phrase(c.words, 'finding.power', more)];
}

/** Ends of a share in percent, as printed. */
function percentWords(share: Estimate): Record<'low' | 'likely' | 'high', string> {
  const r = roundToRange(
    { low: share.low * 100, likely: share.likely * 100, high: share.high * 100 },
    rules.percentStep.value,
  );
  return { low: String(r.low), likely: String(r.likely), high: String(r.high) };
}

function causeSentences(c: Composing): string[] {
  const suspected = c.findings.suspectedCause;
  if (suspected === undefined) return [phrase(c.words, 'finding.causeNotNamed')];
  if (suspected.cause === 'none') return [phrase(c.words, 'finding.causeNone')];
  const cause = phrase(c.words, `cause.${suspected.cause}`);
  return [phrase(c.words, 'finding.cause', { cause }), phrase(c.words, 'finding.causeUnproven')];
}

function unmetSentences(c: Composing): string[] {
  const extra =
    (scenario(c, 'asFound')?.likely.unmetHours ?? 0) - (scenario(c, 'healthy')?.likely.unmetHours ?? 0);
  const step = rules.hourStep.value;
  const hours = Math.round(extra / step) * step;
  return hours >= step ? [counted(c.words, 'finding.unmet', hours)] : [];
}
