'use client';

import { useMemo } from 'react';
import { t } from '@/components/words/words';
import { useAppraisal } from './appraisal-context';
import type { DerivedView } from './view';

/** Which derived value tells what a reading means, first one found. */
const TOLD_BY: Readonly<Record<string, readonly string[]>> = {
  suctionPsig: ['suctionSaturationF', 'evaporatingF', 'suctionDewF'],
  dischargePsig: ['condensingF', 'dischargeSaturationF', 'dischargeBubbleF'],
  suctionLineF: ['suctionSuperheatFd', 'superheatFd'],
  liquidLineF: ['subcoolingFd', 'liquidSubcoolingFd'],
  dischargeLineF: ['dischargeSuperheatFd'],
};

/** What the readings of a run mean, by reading name: "evaporating near 40 °F". */
export function useRunEchoes(runId: string): Readonly<Record<string, string>> {
  const { answer } = useAppraisal();
  return useMemo(() => {
    const derived = answer?.runs.find((run) => run.id === runId)?.derived ?? [];
    return Object.fromEntries(
      Object.entries(TOLD_BY).flatMap(([reading, ids]) => {
        const value = derived.find((d) => ids.includes(d.id));
        return value === undefined ? [] : [[reading, echoWords(value)] as const];
      }),
    );
  }, [answer, runId]);
}

function echoWords(value: DerivedView): string {
  const { target } = value;
  const said = t('echo.value', { name: value.name.toLowerCase(), value: value.value });
  return target === undefined || target.verdict === 'none'
    ? said
    : t('echo.withVerdict', { said, verdict: target.verdictWords });
}
