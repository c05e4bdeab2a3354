'use client';

import { useRunEchoes } from '@/components/appraisal/run-echoes';
import { useDraftState } from '@/components/draft/draft-context';
import { textAt } from '@/components/draft/draft-tree';
import { FieldError } from '@/components/form/field-message';
import { NumberField } from '@/components/form/number-field';
import { PickField, TickField } from '@/components/form/pick-field';
import { TextField } from '@/components/form/text-field';
import { MeasureFolds } from '@/components/measure/measure-folds';
import { TableTargets } from '@/components/measure/table-targets';
import { t, tCode } from '@/components/words/words';
import { Fold, Group } from './fold';
import { READING_GROUPS } from './reading-groups';
import { RunNotes } from './run-notes';

/** All readings of one run. */
export function RunFields(props: { readonly at: number }) {
  const path = `runs.${props.at}`;
  const runId = useDraftState((s) => textAt(s.draft, `${path}.id`));
  const echoes = useRunEchoes(runId);
  return (
    <div className="mt-4">
      <FieldError path={path} />
      <PickField path={`${path}.mode`} words="mode" />
      <TextField path={`${path}.label`} />
      <NumberField path={`${path}.runningMinutes`} />
      <TickField path={`${path}.electricHeatOn`} />
      <RunNotes runId={runId} />
      {READING_GROUPS.map((group) => (
        <div key={group.code}>
          <Group title={tCode(`readings.${group.code}`)}>
            {group.names.map((name) => (
              <NumberField key={name} path={`${path}.${name}`} echo={echoes[name]} />
            ))}
          </Group>
          {group.code === 'gauges' ? <TableTargets runId={runId} /> : null}
        </div>
      ))}
      <div className="mt-6">
        <h3 className="border-b-2 border-ink pb-1 text-xl">{t('measure.title')}</h3>
        <p className="mt-1 mb-2 text-soft">{t('measure.titleWhy')}</p>
        <MeasureFolds path={path} runId={runId} />
        <Fold title={t('run.note')} aside={t('house.optional')}>
          <TextField path={`${path}.note`} long />
        </Fold>
      </div>
    </div>
  );
}
