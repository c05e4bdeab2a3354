'use client';

import { useAppraisal } from '@/components/appraisal/appraisal-context';
import type { MeasureView } from './view';

/** What the measuring screens say about a run; nothing while kind and size of the unit are missing. */
export function useMeasure(runId: string): MeasureView | undefined {
  return useAppraisal().answer?.measures[runId];
}
