import { RangeLine, ScaleTicks, shareOf } from '@/components/charts/scale-parts';
import type { RunningCostBar } from '@/lib/sheet/sheet';

/** This year's running cost as one bar from zero: the part due to the loss hatched, the range a thin line. */
export function CostBar({ bar }: { readonly bar: RunningCostBar }) {
  const share = (usd: number) => shareOf(usd, bar.axis.max);
  const { likely } = bar.total;
  const healthy = bar.faultUsd === undefined ? likely : likely - bar.faultUsd;
  return (
    <figure className="mt-2">
      <div aria-hidden="true" className="relative h-10 border-l-2 border-ink">
        <div
          className="print-ink absolute inset-y-1 left-0 border border-ink bg-hair"
          style={{ width: share(healthy) }}
        />
        <div
          className="print-ink absolute inset-y-1 border border-ink"
          style={{
            left: share(healthy),
            right: `calc(100% - ${share(likely)})`,
            background: 'repeating-linear-gradient(45deg, var(--ink) 0 1.5px, transparent 1.5px 7px)',
          }}
        />
        <RangeLine {...bar.total} max={bar.axis.max} />
      </div>
      <ScaleTicks
        className="border-t border-edge text-base"
        ticks={bar.axis.ticks.map(({ at, label }) => ({ left: share(at), label }))}
      />
      <figcaption className="text-base">
        {bar.restWords}
        {bar.faultUsd === undefined ? '' : ` (▒), ${bar.faultWords} (▨)`}, {bar.rangeWords} (├─┤),{' '}
        {bar.axis.unit}
      </figcaption>
    </figure>
  );
}
