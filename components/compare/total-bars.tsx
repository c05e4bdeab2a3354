import type { Sheet } from '@/lib/sheet/sheet';
import { KindMark } from './choice-table';

const FILL = {
  leave: 'bg-leave',
  repair: 'bg-repair',
  repairThenReplace: 'bg-repair',
  replace: 'bg-replace',
} as const;

/** Totals on one zero-based scale: thick to the likely total, thin line over its range, the figure beside it. */
export function TotalBars(props: { readonly chart: Sheet['pageOne']['totals'] }) {
  const { axis, bars, explanation } = props.chart;
  const share = (usd: number) => `${(100 * Math.max(0, usd)) / axis.max}%`;
  return (
    <figure className="mt-2">
      <ul className="grid gap-4">
        {bars.map((bar) => (
          <li key={bar.id}>
            <div className="flex flex-wrap justify-between gap-x-4">
              <span className="font-semibold">
                <KindMark kind={bar.kind} /> {bar.name}
              </span>
              <span className="text-lg font-semibold">{bar.label}</span>
            </div>
            <div aria-hidden="true" className="relative mt-1 h-8 border-l-2 border-ink">
              {bar.total === undefined ? null : (
                <>
                  <div
                    className={`print-ink absolute inset-y-1 left-0 print:opacity-40 ${FILL[bar.kind]}`}
                    style={{ width: share(bar.total.likely) }}
                  />
                  <div
                    className="absolute top-1/2 h-4 -translate-y-1/2 border-x-3 border-ink "
                    style={{ left: share(bar.total.low), right: `calc(100% - ${share(bar.total.high)})` }}
                  >
                    <div className="absolute inset-x-0 top-1/2 h-1.25 -translate-y-1/2 print-ink border-y border-paper bg-ink" />
                  </div>
                </>
              )}
            </div>
          </li>
        ))}
      </ul>
      <div aria-hidden="true" className="relative mt-1 h-7 border-t border-edge text-soft">
        {axis.ticks.map((tick) => (
          <span
            key={tick.at}
            className="absolute -translate-x-1/2 first:translate-x-0 last:-translate-x-full"
            style={{ left: share(tick.at) }}
          >
            {tick.label}
          </span>
        ))}
      </div>
      <figcaption className="text-soft">
        {axis.unit}. {explanation}
      </figcaption>
    </figure>
  );
}
