'use client';

import { t } from '@/components/words/words';
import { Verdict } from './measure-result';
import { useMeasure } from './use-measure';
import type { TableTargetView } from './view';

/** What the unit's own table asks of a run's pressures; nothing without a table of the run's mode. */
export function TableTargets(props: { readonly runId: string }) {
  const targets = useMeasure(props.runId)?.table ?? [];
  if (targets.length === 0) return null;
  return (
    <section className="note-plain mt-3" aria-label={t('measure.table.targets')}>
      <p className="font-semibold">{t('measure.table.targets')}</p>
      {targets.map((target) => (
        <TargetLines key={target.name} target={target} />
      ))}
    </section>
  );
}

function TargetLines(props: { readonly target: TableTargetView }) {
  const { name, target, reading, verdict, off, note } = props.target;
  return (
    <div className="mt-1">
      <p>
        <span className="font-medium">{name}:</span> {target}
      </p>
      {reading === undefined || verdict === undefined ? null : (
        <Verdict words={t('measure.table.reads', { reading, verdict })} off={off} />
      )}
      {note === undefined ? null : <p className="text-soft">{note}</p>}
    </div>
  );
}
