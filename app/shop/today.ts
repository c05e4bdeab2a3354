import { localDate } from '@/components/draft/blank-visit';

/** The date where this program runs. */
export function todayHere(): string {
  return localDate(new Date());
}
