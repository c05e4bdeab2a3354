import type { Findings } from '../diagnostics/findings';
import { healthyUnit } from '../diagnostics/healthy-unit/healthy-unit';
import type { HealthyUnit } from '../diagnostics/healthy-unit/healthy-unit-model';
import { assertNever } from '../math/invariant';
import type { ReplaceChoice } from '../visit/choice';
import type { Unit } from '../visit/unit';
import type { Visit } from '../visit/visit';
import type { Saying } from '../visit/wording';
import type { Climate } from './climate-model';
import type { EnergyScenario } from './energy-result';
import { furnaceBehind } from './furnace-behind';
import { lossEnds } from './loss-ratios';
import { type CauseChances, causeChances } from './recovery';
import { recoveryScenario } from './recovery-scenario';
import { healthyScenario, newUnitScenario, scenarioOf } from './scenario';
import { shownLoss } from './shown-loss';
import { unitBins } from './unit-bins';
import type { YearContext } from './year-context';

export type ScenariosInput = {
  readonly visit: Visit;
  readonly healthy: HealthyUnit;
  readonly loss: Findings['loss'];
  readonly lossByRun?: NonNullable<Findings['lossByRun']>;
  /** What may be at work; left out = what the technician suspects. */
  readonly chances?: CauseChances;
  readonly climate: Climate;
};

/**
 * The unit healthy and as found, and what each choice makes of it.
 *
 * @param input    visit, the unit as installed, its loss, the climate
 * @param context  house, hours, prices
 * @param notes    doubts are added here
 * Check: tests/energy/yearly-energy.test.ts
 */
export function scenariosOf(input: ScenariosInput, context: YearContext, notes: Saying[]): EnergyScenario[] {
  const { visit, healthy, climate } = input;
  const stages = visit.unit.electricHeatStages;
  const bins = unitBins(healthy, climate.binF, context.load, { stages });
  const ends = lossEnds(input.loss);
  const chances = input.chances ?? chancesBySuspicion(visit);
  const asFound = scenarioOf('asFound', bins, ends, context);
  const ofChoices = visit.choices.map((choice): EnergyScenario => {
    switch (choice.kind) {
      case 'leave':
        return { ...asFound, id: choice.id };
      case 'repair':
      case 'repairThenReplace': {
        const shown = shownLoss(input, choice.shownByRun);
        if (shown !== undefined) return scenarioOf(choice.id, bins, lossEnds(shown), context);
        const { scenario, notes: told } = recoveryScenario(choice, bins, ends, context, chances);
        notes.push(...told);
        return scenario;
      }
      case 'replace': {
        const unit = replacementUnit(visit, healthy, choice);
        notes.push(...unit.notes.map((note) => ofChoice(note, choice.name)));
        notes.push(...replacementNotes(visit, unit, choice, context.heats));
        const furnace =
          choice.furnace === undefined
            ? undefined
            : furnaceBehind(choice.furnace, visit, context.load, climate);
        const backUp = { stages, furnace };
        return newUnitScenario(choice.id, unitBins(unit, climate.binF, context.load, backUp), context);
      }
      default:
        return assertNever(choice);
    }
  });
  return [healthyScenario('healthy', bins, context), asFound, ...ofChoices];
}

/**
 * The new unit of a replacement, as it performs with nothing wrong. Electric heat in the house stays.
 *
 * Check: tests/energy/yearly-energy.test.ts
 */
export function replacementUnit(visit: Visit, existing: HealthyUnit, choice: ReplaceChoice): HealthyUnit {
  const unit: Unit = {
    kind: choice.unitKind,
    nominalTons: choice.nominalTons,
    manufactureYear: Number.parseInt(visit.visitDate.slice(0, 4), 10),
    ratings: choice.ratings,
    electricHeatKw: existing.stripKw,
    ...(choice.blower === undefined ? {} : { blower: choice.blower }),
  };
  const healthy = healthyUnit({
    unit,
    visitDate: visit.visitDate,
    tier: choice.tier,
    ...(visit.site.stateCode === undefined ? {} : { stateCode: visit.site.stateCode }),
    assumptions: visit.assumptions,
  });
  return choice.cutOutF === undefined ? healthy : { ...healthy, cutOutF: choice.cutOutF };
}

function replacementNotes(visit: Visit, unit: HealthyUnit, choice: ReplaceChoice, heats: boolean): Saying[] {
  const values = { choice: choice.name };
  if (unit.heating !== undefined && !heats && visit.site.otherHeat !== true) {
    return [{ code: 'heatingNotCounted', values }];
  }
  if (unit.heating === undefined && heats) return [{ code: 'replacementStripsHeat', values }];
  return [];
}

function ofChoice(note: Saying, choice: string): Saying {
  return { code: `choice.${note.code}`, values: { ...note.values, choice } };
}

function chancesBySuspicion({ suspectedCause }: Visit): CauseChances {
  return causeChances({
    loss: {},
    ...(suspectedCause === undefined
      ? {}
      : { suspectedCause: { cause: suspectedCause.cause, saidBy: 'technician' } }),
  });
}
