'use client';

import { NumberField } from '@/components/form/number-field';
import { t } from '@/components/words/words';
import { Caution, Lines, MethodResult, Notes } from './measure-result';
import { PointEntry } from './point-entry';
import { useMeasure } from './use-measure';

type Props = { readonly path: string; readonly runId: string };

/** Airflow by a hood or a flow grid. */
export function DirectPart(props: Props) {
  const view = useMeasure(props.runId);
  return (
    <>
      <p className="text-soft">{t('measure.direct.why')}</p>
      <NumberField path={`${props.path}.airflowCfm`} />
      <MethodResult result={view?.direct} missing={missingWords(view, t('measure.direct.missing'))} />
    </>
  );
}

/** Airflow by walking an anemometer over the return grille. */
export function GrillePart(props: Props) {
  const view = useMeasure(props.runId);
  const { path } = props;
  return (
    <>
      <p className="text-soft">{t('measure.grille.why')}</p>
      <div className="rows">
        <NumberField path={`${path}.grilleWidthIn`} />
        <NumberField path={`${path}.grilleHeightIn`} />
        <NumberField path={`${path}.grilleAreaIn2`} hint={t('measure.grille.areaHint')} />
        <NumberField path={`${path}.grilleFreeAreaFrac`} hint={t('measure.grille.factorHint')} />
      </div>
      {view === undefined ? null : <p className="text-soft">{view.grille.factor}</p>}
      <h4 className="mt-3 font-serif text-lg font-bold">{t('measure.grille.points')}</h4>
      {view === undefined ? null : <p className="text-soft">{view.grille.advised}</p>}
      <PointEntry path={`${path}.grilleFacePointsFpm`} />
      <NumberField path={`${path}.grilleFaceFpm`} label={t('measure.grille.typedMean')} />
      <Lines lines={view?.grille.lines ?? []} />
      <Notes notes={view?.grille.notes ?? []} />
      <MethodResult result={view?.grille.result} missing={missingWords(view, t('measure.grille.missing'))} />
    </>
  );
}

/** Airflow by the temperature rise over the electric heat. */
export function HeatRisePart(props: Props) {
  const view = useMeasure(props.runId);
  const { path } = props;
  return (
    <>
      <p className="text-soft">{t('measure.rise.why')}</p>
      <Caution>{t('measure.rise.caution')}</Caution>
      <ol className="list-decimal pl-6">
        <li>{t('measure.rise.step1')}</li>
        <li>{t('measure.rise.step2')}</li>
        <li>{t('measure.rise.step3')}</li>
        <li>{t('measure.rise.step4')}</li>
      </ol>
      <div className="rows">
        <NumberField path={`${path}.heatRiseReturnF`} />
        <NumberField path={`${path}.heatRiseSupplyF`} />
        <NumberField path={`${path}.heatRiseV`} />
        <NumberField path={`${path}.heatRiseA`} />
      </div>
      <Lines lines={view?.heatRise?.lines ?? []} />
      <Notes notes={view?.heatRise?.notes ?? []} />
      <MethodResult result={view?.heatRise?.result} missing={missingWords(view, t('measure.rise.missing'))} />
    </>
  );
}

function missingWords(view: object | undefined, missing: string): string {
  return view === undefined ? t('measure.needsUnit') : missing;
}
