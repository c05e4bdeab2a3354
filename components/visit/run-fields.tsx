'use client';

import { useRunEchoes } from '@/components/appraisal/run-echoes';
import { useDraftState } from '@/components/draft/draft-context';
import { textAt, valueAt } from '@/components/draft/draft-tree';
import { FieldError } from '@/components/form/field-message';
import { NumberField } from '@/components/form/number-field';
import { PickField, TickField } from '@/components/form/pick-field';
import { TextField } from '@/components/form/text-field';
import { t, tCode } from '@/components/words/words';
import { Fold, Group } from './fold';
import { READING_GROUPS, type ReadingGroup } from './reading-groups';
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
      {READING_GROUPS.filter((group) => group.first).map((group) => (
        <Group key={group.code} title={tCode(`readings.${group.code}`)}>
          {group.names.map((name) => (
            <NumberField key={name} path={`${path}.${name}`} echo={echoes[name]} />
          ))}
        </Group>
      ))}
      <div className="mt-6">
        {READING_GROUPS.filter((group) => !group.first).map((group) => (
          <FoldedGroup key={group.code} group={group} path={path} echoes={echoes} />
        ))}
        <Fold title={t('run.note')} aside={t('house.optional')}>
          <TextField path={`${path}.note`} long />
        </Fold>
      </div>
    </div>
  );
}

function FoldedGroup(props: {
  readonly group: ReadingGroup;
  readonly path: string;
  readonly echoes: Readonly<Record<string, string>>;
}) {
  const { group, path } = props;
  const filled = useDraftState(
    (s) => group.names.filter((name) => valueAt(s.draft, `${path}.${name}`) !== undefined).length,
  );
  return (
    <Fold
      title={tCode(`readings.${group.code}`)}
      aside={t('readings.filled', { n: filled, of: group.names.length })}
    >
      <p className="text-soft">{tCode(`readings.${group.code}Why`)}</p>
      <div className="rows">
        {group.names.map((name) => (
          <NumberField key={name} path={`${path}.${name}`} echo={props.echoes[name]} />
        ))}
      </div>
    </Fold>
  );
}
