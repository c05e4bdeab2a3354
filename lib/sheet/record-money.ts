import type { EnergyScenario } from '../energy/energy-result';
import { assumptionsSection } from './assumptions-section';
import { chanceWords } from './chance-words';
import { climateWords } from './climate-words';
import { type Composing, stayWords } from './composing';
import { doubtsSection } from './doubts-section';
import { moneyRangeWords, quotedWords, savingWords } from './money-words';
import { phrase, plainNumber } from './phrase';
import type { PlainSection } from './plain-document';

/** Electricity of a year for every unit and choice, and what it rests on. */
export function energySection(c: Composing): PlainSection {
  const { words, energy } = c;
  const title = phrase(words, 'record.energyTitle');
  const kwh = (value: number) => plainNumber(words, value, 0);
  return {
    id: 'energy',
    title,
    weight: 'evidence',
    sentences: [
      phrase(words, 'record.energyBasis', {
        climate: climateWords(words, energy.climateName),
        heating: kwh(energy.load.heatingBtuhAtDesign),
        heatingF: kwh(energy.load.heatingDesignF),
        cooling: kwh(energy.load.coolingBtuhAtDesign),
        coolingF: kwh(energy.load.coolingDesignF),
        basis: phrase(words, `basis.${energy.load.basis}`),
        source: energy.load.source,
        price: plainNumber(words, energy.priceUsdPerKwh * 100, 1),
        priceBasis: phrase(words, `basis.${energy.priceBasis}`),
      }),
    ],
    tables: [
      {
        caption: title,
        columns: [
          { label: phrase(words, 'record.columnScenario'), align: 'left', share: 0.26 },
          { label: phrase(words, 'record.columnHeating'), align: 'right', share: 0.12 },
          { label: phrase(words, 'record.columnStrip'), align: 'right', share: 0.12 },
          { label: phrase(words, 'record.columnCooling'), align: 'right', share: 0.12 },
          { label: phrase(words, 'record.columnOther'), align: 'right', share: 0.14 },
          { label: phrase(words, 'record.columnCost'), align: 'right', share: 0.24 },
        ],
        rows: energy.scenarios.map((scenario) => ({
          cells: [
            scenarioName(c, scenario),
            kwh(scenario.likely.heatingCompressorKwh),
            kwh(scenario.likely.stripHeatKwh),
            kwh(scenario.likely.coolingKwh),
            kwh(scenario.likely.blowerKwh + scenario.likely.standbyKwh),
            moneyRangeWords(words, scenario.costUsd).full,
          ],
        })),
      },
    ],
  };
}

function scenarioName(c: Composing, { id }: EnergyScenario): string {
  if (id === 'healthy' || id === 'asFound') return phrase(c.words, `record.scenario.${id}`);
  return c.names.choice(id) ?? id;
}

/** The choices with price, total and saving. */
export function choicesSection(c: Composing): PlainSection {
  const { words } = c;
  const title = phrase(words, 'record.choicesTitle');
  return {
    id: 'choices',
    title,
    weight: 'evidence',
    tables: [
      {
        caption: title,
        columns: [
          { label: phrase(words, 'table.choice'), align: 'left', share: 0.24 },
          { label: phrase(words, 'record.columnPrice'), align: 'right', share: 0.13 },
          { label: phrase(words, 'record.columnBreakdown'), align: 'right', share: 0.13 },
          { label: phrase(words, 'record.columnTotal', { stay: stayWords(c) }), align: 'right', share: 0.25 },
          { label: phrase(words, 'record.columnSaving'), align: 'right', share: 0.25 },
        ],
        rows: c.comparison.choices.map((choice) => ({
          strong: choice.id === c.comparison.recommendation.choiceId,
          cells: [
            choice.name,
            choice.priced ? quotedWords(choice.priceUsd) : phrase(words, 'general.notKnown'),
            chanceWords(words, choice.failsWithinStayFrac.likely),
            moneyRangeWords(words, choice.totalTodayUsd).full,
            choice.kind === 'leave' ? phrase(words, 'general.none') : savingWords(words, choice.netSavingUsd),
          ],
        })),
      },
    ],
  };
}

/** Every assumption with range and source: the whole list that the customer's sheet has no room for. */
export function sourcesSection(c: Composing): PlainSection {
  const { words } = c;
  const { rows, columns } = assumptionsSection(c);
  const title = phrase(words, 'record.assumptionsTitle');
  return {
    id: 'assumptions',
    title,
    weight: 'evidence',
    tables: [
      {
        caption: title,
        columns: [
          { label: columns[0], align: 'left', share: 0.32 },
          { label: columns[1], align: 'right', share: 0.13 },
          { label: columns[2], align: 'right', share: 0.17 },
          { label: columns[3], align: 'left', share: 0.38 },
        ],
        rows: rows.map((row) => ({ cells: [row.name, row.value, row.range, row.source] })),
      },
    ],
  };
}

/** Every note of every step; on the customer's sheet only those that fit. */
export function stepNotesSection(c: Composing): PlainSection {
  const { sentences } = doubtsSection(c);
  return {
    id: 'notes',
    title: phrase(c.words, 'record.doubtsTitle'),
    weight: 'evidence',
    sentences: sentences.length === 0 ? [phrase(c.words, 'general.none')] : sentences,
  };
}
