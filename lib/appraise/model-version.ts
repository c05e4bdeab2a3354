/**
 * Version of the calculation; printed on every sheet. Bump it when a number a customer can see moves, and say why.
 *
 * 1.0.0  first version
 * 1.1.0  what a repair gives back follows the causes found and the shares of the loss, right and wrong cause are in the
 *        range, risk goes by cause, advice is given at about four chances in five;
 *        blower power from the watts, airflow and static read; cycling, frost and heat loss carry a range of their own,
 *        added as independent; bills, tariffs, own weather, set-back and furnaces count where a visit has them;
 *        causes: flow through coil and compressor, standing pressure and reversing-valve rise as evidence; air in the
 *        circuit in two variants;
 *        a bulged capacitor, a frozen coil, a blower at rest, escaping refrigerant and a knocking compressor count as
        evidence for their causes;
        whether a heat balance is void hangs on what was read alone, so that less sure instruments never narrow a loss;
        the discharge temperature to expect in cooling no longer takes its superheat from the heating rule where no
        cooling target is published;
        dated first payments, promotions and rebates against a loan count;
 *        the simulation reads each draw's yearly cost at its own capacity, power and need of the house instead of going
 *        straight between the ends, with the losses of capacity and power independent;
        readings that cannot all be true are left out of the causes, and no cause is found by them;
        no superheat below 5 F is within its target, and the condensing rule answers from 55 to 115 F outdoors only
 */
export const MODEL_VERSION = '1.1.0';
