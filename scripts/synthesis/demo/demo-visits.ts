import type { Visit } from '../../../lib/visit/visit';
import { closedRegisters } from './closed-registers';
import { endOfLife } from './end-of-life';
import { fewReadings } from './few-readings';
import { healthyUnitVisit } from './healthy';
import { lowCharge } from './low-charge';
import { overcharged } from './overcharged';
import { restrictedOrifice } from './restricted-orifice';
import { shortStay } from './short-stay';
import { weakCapacitor } from './weak-capacitor';

/** All invented visits, freshly computed. The same every time. */
export function demoVisits(): readonly Visit[] {
  return [
    restrictedOrifice(),
    lowCharge(),
    closedRegisters(),
    healthyUnitVisit(),
    endOfLife(),
    shortStay(),
    weakCapacitor(),
    overcharged(),
    fewReadings(),
  ];
}

/** A visit as it stands in its file. */
export function asFile(visit: Visit): string {
  return `${JSON.stringify(visit, null, 2)}\n`;
}
