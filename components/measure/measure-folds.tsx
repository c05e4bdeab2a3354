'use client';

import type { ReactNode } from 'react';
import { useDraftState } from '@/components/draft/draft-context';
import { valueAt } from '@/components/draft/draft-tree';
import { Fold } from '@/components/visit/fold';
import { t, tCode } from '@/components/words/words';
import { DirectPart, GrillePart, HeatRisePart } from './airflow-parts';
import { CIRCUIT_NAMES, CircuitPart } from './circuit-part';
import { CapacitorPart, StripPart } from './electric-parts';
import { StaticsPart } from './statics-part';
import { useMeasure } from './use-measure';
import type { MeasureView } from './view';

type Place = { readonly path: string; readonly runId: string };

/** One way of measuring: its readings, its screen, and the line its fold shows once there is a result. */
type Measurement = {
  readonly code: 'grille' | 'rise' | 'direct' | 'statics' | 'caps' | 'strips' | 'circuit';
  readonly names: readonly string[];
  readonly lineOf: (view: MeasureView) => string | undefined;
  readonly part: (place: Place) => ReactNode;
};

const MEASUREMENTS: readonly Measurement[] = [
  {
    code: 'grille',
    names: ['grilleWidthIn', 'grilleHeightIn', 'grilleAreaIn2', 'grilleFacePointsFpm', 'grilleFaceFpm'],
    lineOf: (view) => view.grille.result?.line,
    part: (place) => <GrillePart {...place} />,
  },
  {
    code: 'rise',
    names: ['heatRiseReturnF', 'heatRiseSupplyF', 'heatRiseV', 'heatRiseA'],
    lineOf: (view) => view.heatRise?.result?.line,
    part: (place) => <HeatRisePart {...place} />,
  },
  {
    code: 'direct',
    names: ['airflowCfm'],
    lineOf: (view) => view.direct?.line,
    part: (place) => <DirectPart {...place} />,
  },
  {
    code: 'statics',
    names: ['returnStaticInWc', 'filterDropInWc', 'coilDropInWc', 'supplyStaticInWc'],
    lineOf: (view) => view.statics?.line,
    part: (place) => <StaticsPart {...place} />,
  },
  {
    code: 'caps',
    names: ['compressorCapRatedUf', 'compressorCapUf', 'fanCapRatedUf', 'fanCapUf'],
    lineOf: (view) =>
      view.capacitors.length === 0 ? undefined : view.capacitors.map(({ line }) => line).join(', '),
    part: (place) => <CapacitorPart {...place} />,
  },
  {
    code: 'strips',
    names: ['stripKw', 'stripElementCount', 'stripV', 'stripA'],
    lineOf: (view) => view.strips?.line,
    part: (place) => <StripPart {...place} />,
  },
  {
    code: 'circuit',
    names: CIRCUIT_NAMES,
    lineOf: () => undefined,
    part: (place) => <CircuitPart {...place} />,
  },
];

/** Every way of measuring beyond gauges and clamps, folded until it is wanted. */
export function MeasureFolds(props: Place) {
  return MEASUREMENTS.map((measurement) => (
    <MeasureFold key={measurement.code} measurement={measurement} place={props} />
  ));
}

function MeasureFold(props: { readonly measurement: Measurement; readonly place: Place }) {
  const { measurement, place } = props;
  const view = useMeasure(place.runId);
  const filled = useDraftState(
    (s) => measurement.names.filter((name) => valueAt(s.draft, `${place.path}.${name}`) !== undefined).length,
  );
  const line = view === undefined ? undefined : measurement.lineOf(view);
  return (
    <Fold
      title={
        <>
          {tCode(`measure.fold.${measurement.code}`)}
          {filled === 0 || line === undefined ? null : (
            <span className="block font-normal text-soft">{line}</span>
          )}
        </>
      }
      {...(filled > 0 && line !== undefined
        ? {}
        : { aside: filled === 0 ? t('house.optional') : t('measure.begun') })}
    >
      {measurement.part(place)}
    </Fold>
  );
}
