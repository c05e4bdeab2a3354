'use client';

import { useAppraisal } from '@/components/appraisal/appraisal-context';
import { FlagNote } from '@/components/results/flag-note';

/** Dangers and doubts of one run, where it is typed; said politely when they appear. */
export function RunNotes(props: { readonly runId: string }) {
  const { answer } = useAppraisal();
  const flags = (answer?.flags ?? []).filter(
    (flag) => flag.runId === props.runId && flag.severity !== 'unknown',
  );
  return (
    <div role="status" className="grid gap-2">
      {flags.map((flag) => (
        <FlagNote key={flag.words} flag={flag} />
      ))}
    </div>
  );
}
