import type { CauseEvidence, CauseFinding, Loss } from '../diagnostics/findings';
import type { Estimate } from '../math/estimate';
import { chanceWords } from './chance-words';
import { type Composing, told } from './composing';
import { flagWords } from './finding-section';
import { lowerFirst, type PhraseCode, phrase, plainNumber } from './phrase';
import type { PlainSection, PlainTable } from './plain-document';
import { quantityName } from './reading-words';
import { runLabel } from './record-readings';

/** How many pieces of evidence of a cause are named on either side. */
const evidenceTold = 4;

/** Dangers first, then what contradicts itself, then doubts. */
export function flagsSection(c: Composing): PlainSection {
  const order = ['danger', 'conflict', 'doubt', 'unknown'] as const;
  const sentences = order.flatMap((severity) =>
    c.findings.flags
      .filter((flag) => flag.severity === severity)
      .map((flag) => phrase(c.words, `record.flag.${severity}`, { text: flagWords(c, flag) })),
  );
  return {
    id: 'flags',
    title: phrase(c.words, 'record.flagsTitle'),
    weight: 'evidence',
    sentences: sentences.length === 0 ? [phrase(c.words, 'record.noFlags')] : [...new Set(sentences)],
  };
}

/** Causes with what speaks for and against each, what they are easily taken for, and what to read next. */
export function causesSections(c: Composing): PlainSection[] {
  const { words } = c;
  const title = phrase(words, 'record.causesTitle');
  const { causes } = c.findings;
  if (causes === undefined) {
    return [{ id: 'causes', title, weight: 'evidence', sentences: [phrase(words, 'record.noCauses')] }];
  }
  const verdict = told(c, { code: `verdict.${causes.verdict}` });
  const chance = chanceWords(words, causes.noFaultProbability);
  return [
    {
      id: 'causes',
      title,
      weight: 'evidence',
      sentences: [
        phrase(words, 'record.causesVerdict', { verdict, chance }),
        ...causes.causes.flatMap((cause) => [
          ...cause.confusedWith.map(({ cause: other, separate }) =>
            phrase(words, 'record.confused', {
              other: lowerFirst(causeName(c, other)),
              separate: told(c, separate),
            }),
          ),
          ...cause.hints.map((hint) => told(c, hint)),
        ]),
        ...causes.resolved.map(({ cause, fromRunId, toRunId }) =>
          phrase(words, 'record.resolved', {
            cause: causeName(c, cause),
            from: nameOfRun(c, fromRunId),
            to: nameOfRun(c, toRunId),
          }),
        ),
        ...causes.notes.map((note) => told(c, note)),
      ].filter((sentence, i, all) => all.indexOf(sentence) === i),
      tables: [causesTable(c, causes.causes)],
    },
    ...(causes.nextReadings.length === 0
      ? []
      : [
          {
            id: 'next',
            title: phrase(words, 'record.nextTitle'),
            weight: 'evidence' as const,
            facts: causes.nextReadings.map((next) => ({
              label: told(c, next.saying),
              text:
                next.outcomes.length === 0
                  ? phrase(words, 'record.outcomeOpen')
                  : next.outcomes
                      .map((o) =>
                        phrase(words, 'record.outcome', {
                          outcome: phrase(words, `record.outcome.${o.outcome}`),
                          cause: lowerFirst(causeName(c, o.cause)),
                          chance: chanceWords(words, Math.min(1, o.probability)),
                        }),
                      )
                      .join('; '),
            })),
          },
        ]),
  ];
}

/** The trade's name of a cause. */
function causeName(c: Composing, cause: string): string {
  return c.words.stages[`cause.${cause}`] ?? cause;
}

function nameOfRun(c: Composing, id: string): string {
  const at = c.visit.runs.findIndex((run) => run.id === id);
  const run = c.visit.runs[at];
  return run === undefined ? id : runLabel(c, run, at);
}

function causesTable(c: Composing, causes: readonly CauseFinding[]): PlainTable {
  const { words } = c;
  return {
    caption: phrase(words, 'record.causesTitle'),
    columns: [
      { label: phrase(words, 'record.columnCause'), align: 'left', share: 0.2 },
      { label: phrase(words, 'record.columnChance'), align: 'left', share: 0.1 },
      { label: phrase(words, 'record.columnStanding'), align: 'left', share: 0.16 },
      { label: phrase(words, 'record.columnFor'), align: 'left', share: 0.28 },
      { label: phrase(words, 'record.columnAgainst'), align: 'left', share: 0.26 },
    ],
    rows: causes.map((cause) => ({
      cells: [
        causeName(c, cause.cause),
        chanceWords(words, Math.min(1, cause.probability)),
        phrase(words, 'record.standing', {
          standing: told(c, { code: `standing.${cause.standing}` }),
          severity: phrase(words, `record.severity.${cause.severity.word}`),
        }),
        evidenceWords(c, cause.speaksFor),
        evidenceWords(c, cause.speaksAgainst),
      ],
    })),
  };
}

function evidenceWords(c: Composing, evidence: readonly CauseEvidence[]): string {
  if (evidence.length === 0) return phrase(c.words, 'general.none');
  return evidence
    .slice(0, evidenceTold)
    .map((e) => {
      if (e.kind === 'step') return phrase(c.words, 'record.step', { run: nameOfRun(c, e.id) });
      const seen = `seen.${e.id}`;
      const name =
        e.kind === 'observation' && seen in c.words.phrases
          ? phrase(c.words, seen as PhraseCode)
          : lowerFirst(quantityName(c.words, e.id) ?? e.id);
      return e.sigmas === undefined
        ? name
        : phrase(c.words, 'record.evidence', { name, sigmas: plainNumber(c.words, e.sigmas) });
    })
    .join('; ');
}

/** How far output falls and power rises, and by which ways that was told. */
export function lossSection(c: Composing): PlainSection {
  const { words } = c;
  const losses = [c.findings.loss.heating, c.findings.loss.cooling].filter((loss) => loss !== undefined);
  const title = phrase(words, 'record.lossTitle');
  return {
    id: 'loss',
    title,
    weight: 'evidence',
    sentences:
      losses.length === 0
        ? [phrase(words, 'record.lossUnknown')]
        : losses.flatMap((loss) => [lossWords(c, loss), ...loss.notes.map((note) => told(c, note))]),
    tables: losses.filter((loss) => loss.routes.length > 0).map((loss) => routesTable(c, loss, title)),
  };
}

function lossWords(c: Composing, loss: Loss): string {
  return phrase(c.words, 'record.loss', {
    what: phrase(c.words, loss.mode === 'heating' ? 'readings.modeHeating' : 'readings.modeCooling'),
    capacity: percentRange(c, loss.capacityRatioToHealthy),
    power: percentRange(c, loss.powerRatioToHealthy),
    basis: phrase(c.words, `basis.${loss.basis}`),
  });
}

function percentRange({ words }: Composing, share: Estimate): string {
  const percent = (value: number) => plainNumber(words, value * 100, 0);
  return phrase(words, 'record.percentRange', {
    low: percent(share.low),
    likely: percent(share.likely),
    high: percent(share.high),
  });
}

function routesTable(c: Composing, loss: Loss, title: string): PlainTable {
  const { words } = c;
  const spread = (ln: { readonly mean: number; readonly sd: number } | undefined) =>
    ln === undefined
      ? '\u2013'
      : percentRange(c, {
          low: Math.exp(ln.mean - ln.sd),
          likely: Math.exp(ln.mean),
          high: Math.exp(ln.mean + ln.sd),
        });
  const mode = phrase(words, loss.mode === 'heating' ? 'readings.modeHeating' : 'readings.modeCooling');
  return {
    caption: `${title} (${mode})`,
    columns: [
      { label: `${phrase(words, 'record.columnRoute')} (${mode})`, align: 'left', share: 0.5 },
      { label: phrase(words, 'record.columnOutput'), align: 'right', share: 0.25 },
      { label: phrase(words, 'record.columnPower'), align: 'right', share: 0.25 },
    ],
    rows: loss.routes.map((route) => ({
      cells: [phrase(words, `record.route.${route.id}`), spread(route.lnCapacity), spread(route.lnPower)],
    })),
  };
}
