/** Share of a zero-based scale as a length, for a bar or a mark; nothing stands left of zero. */
export function shareOf(value: number, max: number): string {
  return `${(100 * Math.max(0, value)) / max}%`;
}

/** Words below a scale, each under its place; the first and last stay within it. */
export function ScaleTicks(props: {
  readonly ticks: readonly { readonly left: string; readonly label: string }[];
  readonly className: string;
}) {
  return (
    <div aria-hidden="true" className={`relative h-7 text-soft ${props.className}`}>
      {props.ticks.map((tick) => (
        <span
          key={tick.label}
          className="absolute -translate-x-1/2 first:translate-x-0 last:-translate-x-full"
          style={{ left: tick.left }}
        >
          {tick.label}
        </span>
      ))}
    </div>
  );
}

/** A range as a thin line with ends, over a bar. */
export function RangeLine(props: { readonly low: number; readonly high: number; readonly max: number }) {
  return (
    <div
      className="absolute top-1/2 h-4 -translate-y-1/2 border-x-3 border-ink"
      style={{ left: shareOf(props.low, props.max), right: `calc(100% - ${shareOf(props.high, props.max)})` }}
    >
      <div className="print-ink absolute inset-x-0 top-1/2 h-1.25 -translate-y-1/2 border-y border-paper bg-ink" />
    </div>
  );
}
