import type { YearUse } from '@/lib/energy/year-by-use';

/** Colour and drawing of a use: each has both, so that a black-and-white copy still tells them apart. */
const LOOKS: Readonly<Record<YearUse, { readonly colour: string; readonly drawing: string }>> = {
  heating: { colour: 'var(--use-heating)', drawing: 'M0 0H8V8H0Z' },
  strip: { colour: 'var(--use-strip)', drawing: 'M-2 6L6 -2L8 -2L8 0L0 8L-2 8Z M6 10L10 6L10 10Z' },
  cooling: { colour: 'var(--use-cooling)', drawing: 'M0 1H8V4H0Z' },
  blower: { colour: 'var(--edge)', drawing: '' },
  fuel: { colour: 'var(--ink)', drawing: 'M2 0H4V8H2Z M0 2H8V4H0Z' },
};

/** The drawings as patterns, once for each picture. */
export function UsePatterns(props: { readonly id: string; readonly uses: readonly YearUse[] }) {
  return (
    <defs>
      {props.uses.map((use) => (
        <pattern key={use} id={patternId(props.id, use)} width="8" height="8" patternUnits="userSpaceOnUse">
          <rect width="8" height="8" fill="var(--leaf)" />
          <path d={LOOKS[use].drawing} fill={LOOKS[use].colour} />
        </pattern>
      ))}
    </defs>
  );
}

export function colourOf(use: YearUse): string {
  return LOOKS[use].colour;
}

export function patternId(id: string, use: YearUse): string {
  return `${id}-${use}`;
}

/** A piece of a use as it is drawn. */
export function UseSwatch(props: { readonly id: string; readonly use: YearUse }) {
  const id = `${props.id}-swatch`;
  return (
    <svg aria-hidden="true" width="24" height="16" viewBox="0 0 24 16" className="inline-block shrink-0">
      <UsePatterns id={id} uses={[props.use]} />
      <rect
        x="1"
        y="1"
        width="22"
        height="14"
        fill={`url(#${patternId(id, props.use)})`}
        stroke={colourOf(props.use)}
        strokeWidth="1.5"
      />
    </svg>
  );
}
