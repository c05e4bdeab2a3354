import { type Choice, repairs } from '../visit/choice';

/** Whether a choice is a repair that puts in a new compressor. Check: tests/finance/expected-years.test.ts */
export function renewsCompressor(choice: Choice): boolean {
  return repairs(choice) && choice.actions.includes('compressor');
}
