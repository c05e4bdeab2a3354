/**
 * Version of the calculation; printed on every sheet. Bump it when a number a customer can see moves, and say why.
 *
 * 1.0.0  first version
 */
export const MODEL_VERSION = '1.0.0';
