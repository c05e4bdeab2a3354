import type { RunningCostBar } from '@/lib/sheet/sheet';

/** This year's running cost as one bar from zero: the part due to the loss hatched, the range a thin line. */
export function CostBar({ bar }: { readonly bar: RunningCostBar }) {
  const share = (usd: number) => `${(100 * Math.max(0, usd)) / bar.axis.max}%`;
  const { low, likely, high } = bar.total;
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
        <div
          className="absolute top-1/2 h-4 -translate-y-1/2 border-x-3 border-ink"
          style={{ left: share(low), right: `calc(100% - ${share(high)})` }}
        >
          <div className="print-ink absolute inset-x-0 top-1/2 h-1.25 -translate-y-1/2 border-y border-paper bg-ink" />
        </div>
      </div>
      <div aria-hidden="true" className="relative h-7 border-t border-edge text-base text-soft">
        {bar.axis.ticks.map((tick) => (
          <span
            key={tick.at}
            className="absolute -translate-x-1/2 first:translate-x-0 last:-translate-x-full"
            style={{ left: share(tick.at) }}
          >
            {tick.label}
          </span>
        ))}
      </div>
      <figcaption className="text-base">
        {bar.restWords}
        {bar.faultUsd === undefined ? '' : ` (▒), ${bar.faultWords} (▨)`}, {bar.rangeWords} (├─┤),{' '}
        {bar.axis.unit}
      </figcaption>
    </figure>
  );
}
