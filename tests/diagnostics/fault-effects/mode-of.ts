import { Mode } from '@/lib/visit/run';

/** Mode from the text of a reference file; anything else fails the test. */
export function modeOf(text: string): Mode {
  return Mode.parse(text);
}
