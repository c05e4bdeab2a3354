'use client';

import { NumberField } from '@/components/form/number-field';
import { t } from '@/components/words/words';
import { Caution } from './measure-result';

/** Readings of the circuit tests, in the order of the screen. */
export const CIRCUIT_NAMES: readonly string[] = [
  'statedSuperheatFd',
  'statedSubcoolingFd',
  'standingPsig',
  'standingCoilAirF',
  'suctionBeforeValveF',
];

/** The gauge's own superheat and subcooling, and special tests of the circuit; results show among the causes. */
export function CircuitPart(props: { readonly path: string }) {
  return (
    <>
      <p className="text-soft">{t('measure.circuit.why')}</p>
      <Caution>{t('measure.circuit.caution')}</Caution>
      <div className="rows">
        {CIRCUIT_NAMES.map((name) => (
          <NumberField key={name} path={`${props.path}.${name}`} />
        ))}
      </div>
    </>
  );
}
