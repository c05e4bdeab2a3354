'use client';

import { useDraftState } from '@/components/draft/draft-context';
import { listAt, textAt } from '@/components/draft/draft-tree';
import { NumberField } from '@/components/form/number-field';
import { t } from '@/components/words/words';

const PRICE_OF_FUEL: readonly (readonly [fuel: string, path: string])[] = [
  ['naturalGas', 'fuelPrices.gasUsdPerTherm'],
  ['propane', 'fuelPrices.propaneUsdPerGallon'],
  ['oil', 'fuelPrices.oilUsdPerGallon'],
];

/** Prices of the fuels that some choice burns; without a furnace none is asked for. */
export function FuelFields() {
  const fuels = useDraftState((s) =>
    listAt(s.draft, 'choices')
      .map((choice) => textAt(choice, 'furnace.fuel'))
      .join(' '),
  );
  const needed = PRICE_OF_FUEL.filter(([fuel]) => fuels.split(' ').includes(fuel));
  return needed.map(([fuel, path]) => <NumberField key={fuel} path={path} hint={t('tariff.fuelHint')} />);
}
