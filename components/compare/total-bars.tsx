import { RangeLine, ScaleTicks, shareOf } from '@/components/charts/scale-parts';
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
  const share = (usd: number) => shareOf(usd, axis.max);
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
                  <RangeLine {...bar.total} max={axis.max} />
                </>
              )}
            </div>
          </li>
        ))}
      </ul>
      <ScaleTicks
        className="mt-1 border-t border-edge"
        ticks={axis.ticks.map(({ at, label }) => ({ left: share(at), label }))}
      />
      <figcaption className="text-soft">
        {axis.unit}. {explanation}
      </figcaption>
    </figure>
  );
}
