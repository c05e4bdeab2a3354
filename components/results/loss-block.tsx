import type { LossView, RouteView } from '@/components/appraisal/view';
import { t } from '@/components/words/words';
import { More } from './more';
import { Titled } from './titled';

/** How far the unit has fallen off in one mode, what takes it, and every way it was estimated. */
export function LossBlock(props: { readonly loss: LossView }) {
  const { loss } = props;
  return (
    <Titled title={loss.title}>
      <dl className="rows mt-1">
        <div className="py-2">
          <dt>{t('loss.capacity')}</dt>
          <dd className="text-lg font-semibold">{loss.capacity}</dd>
        </div>
        <div className="py-2">
          <dt>{t('loss.power')}</dt>
          <dd className="text-lg font-semibold">{loss.power}</dd>
        </div>
        {loss.parts.length === 0 ? null : (
          <div className="py-2">
            <dt>{t('loss.parts')}</dt>
            {loss.parts.map(({ name, share }) => (
              <dd key={name}>{t('loss.part', { name, share })}</dd>
            ))}
          </div>
        )}
      </dl>
      {loss.notes.map((note) => (
        <p key={note} className="mt-1">
          {note}
        </p>
      ))}
      {loss.routes.length === 0 ? null : (
        <More title={t('loss.routes', { basis: loss.basis })} strong>
          <ul className="rows">
            {loss.routes.map((route) => (
              <Route key={`${route.name} ${route.capacity ?? ''} ${route.power ?? ''}`} route={route} />
            ))}
          </ul>
          <p className="mt-2">{t('loss.fused', { capacity: loss.capacity, power: loss.power })}</p>
        </More>
      )}
    </Titled>
  );
}

function Route(props: { readonly route: RouteView }) {
  const { route } = props;
  return (
    <li className="py-2">
      <span className="font-semibold">{route.name}</span>
      {route.capacity === undefined ? null : (
        <span className="block">{t('loss.routeCapacity', { range: route.capacity })}</span>
      )}
      {route.power === undefined ? null : (
        <span className="block">{t('loss.routePower', { range: route.power })}</span>
      )}
      {route.notes.map((note) => (
        <span key={note} className="block text-soft">
          {note}
        </span>
      ))}
    </li>
  );
}
