/**
 * Stops the computation when our own code has broken one of its promises. Never used for what a user typed.
 *
 * @param cond     must be truthy
 * @param message  what was promised, with the values that broke it
 * @throws Error when `cond` is falsy
 * Check: tests/math/invariant.test.ts
 */
export function invariant(cond: unknown, message: string): asserts cond {
  if (!cond) throw new Error(`invariant: ${message}`);
}

/**
 * Closes an exhaustive switch: the compiler rejects the call while a case is missing.
 *
 * @param x  the value no case has taken
 * @throws Error always, since reaching it at run time means unchecked data
 * Check: tests/math/invariant.test.ts
 */
export function assertNever(x: never): never {
  throw new Error(`invariant: unhandled case ${JSON.stringify(x)}`);
}
