'use client';

import { NumberField } from '@/components/form/number-field';
import { t } from '@/components/words/words';
import { Caution, CheckResult } from './measure-result';
import { useMeasure } from './use-measure';

type Props = { readonly path: string; readonly runId: string };

/** Run capacitors against their labels. */
export function CapacitorPart(props: Props) {
  const view = useMeasure(props.runId);
  return (
    <>
      <p className="text-soft">{t('measure.cap.why')}</p>
      <Caution>{t('measure.cap.caution')}</Caution>
      <div className="rows">
        {['compressorCapRatedUf', 'compressorCapUf', 'fanCapRatedUf', 'fanCapUf'].map((name) => (
          <NumberField key={name} path={`${props.path}.${name}`} />
        ))}
      </div>
      <Checks known={view !== undefined} checks={view?.capacitors ?? []} missing={t('measure.cap.missing')} />
    </>
  );
}

/** Amps of the electric heat against its kilowatts. */
export function StripPart(props: Props) {
  const view = useMeasure(props.runId);
  const checks = view?.strips === undefined ? [] : [view.strips];
  return (
    <>
      <p className="text-soft">{t('measure.strip.why')}</p>
      <Caution>{t('measure.strip.caution')}</Caution>
      <div className="rows">
        {['stripKw', 'stripElementCount', 'stripV', 'stripA'].map((name) => (
          <NumberField key={name} path={`${props.path}.${name}`} />
        ))}
      </div>
      <Checks known={view !== undefined} checks={checks} missing={t('measure.strip.missing')} />
    </>
  );
}

function Checks(props: {
  readonly known: boolean;
  readonly checks: readonly Parameters<typeof CheckResult>[0]['check'][];
  readonly missing: string;
}) {
  if (props.checks.length === 0) {
    return <p className="mt-2 text-soft">{props.known ? props.missing : t('measure.needsUnit')}</p>;
  }
  return props.checks.map((check) => <CheckResult key={check.name} check={check} />);
}
