'use client';

import { useId } from 'react';
import {
  Area,
  CartesianGrid,
  ComposedChart,
  Label,
  Line,
  ReferenceDot,
  ResponsiveContainer,
  XAxis,
  YAxis,
} from 'recharts';
import type { ChartLine, ShadeView } from '@/components/appraisal/chart-view';
import { lookOf } from './chart-looks';
import { PLOT_TEXT } from './plot-text';

type Props = {
  readonly lines: readonly ChartLine[];
  readonly points: readonly { readonly x: number; readonly at: Readonly<Record<string, number>> }[];
  readonly xWords: string;
  readonly yWords: string;
  readonly xTicks: readonly number[];
  readonly yTicks: readonly number[];
  readonly yText: (value: number) => string;
  readonly shade?: ShadeView | undefined;
};

/** Height of the class `h-96`, which the plot has. */
const HEIGHT_PX = 384;
const MARGIN_PX = { top: 16, right: 4, bottom: 28, left: 4 };
const X_AXIS_PX = 30;
const PLOT_PX = HEIGHT_PX - MARGIN_PX.top - MARGIN_PX.bottom - X_AXIS_PX;
const LABEL_PX = 44;

/** Lines on zero-based axes with their names at their ends; nothing is told by hovering. */
export function LinePlot(props: Props) {
  const { lines, points, shade } = props;
  const hatch = `hatch${useId().replace(/[^a-zA-Z0-9]/g, '')}`;
  const yMax = props.yTicks.at(-1) ?? 1;
  return (
    <figure className="mt-2">
      <p aria-hidden="true" className="text-soft">
        {props.yWords}
      </p>
      <div aria-hidden="true" className="plot flex h-96">
        <div className="min-w-0 flex-1">
          <ResponsiveContainer width="100%" height="100%">
            <ComposedChart data={[...points]} margin={MARGIN_PX} accessibilityLayer={false}>
              <CartesianGrid stroke="var(--hair)" vertical={false} />
              <XAxis
                dataKey="x"
                type="number"
                domain={['dataMin', 'dataMax']}
                ticks={[...props.xTicks]}
                height={X_AXIS_PX}
                stroke="var(--edge)"
                tick={PLOT_TEXT}
              >
                <Label value={props.xWords} position="bottom" offset={6} {...PLOT_TEXT} />
              </XAxis>
              <YAxis
                domain={[0, yMax]}
                ticks={[...props.yTicks]}
                tickFormatter={props.yText}
                width={64}
                stroke="var(--edge)"
                tick={PLOT_TEXT}
              />
              {shade === undefined ? null : (
                <>
                  <defs>
                    <pattern id={hatch} width="8" height="8" patternUnits="userSpaceOnUse">
                      <path d="M-1 7L7 -1M5 9L9 5M-1 1L1 -1" stroke="var(--use-strip)" strokeWidth="2" />
                    </pattern>
                  </defs>
                  <Area
                    data={[...shade.points]}
                    dataKey="between"
                    stroke="none"
                    fill={`url(#${hatch})`}
                    fillOpacity={1}
                    activeDot={false}
                    isAnimationActive={false}
                  />
                </>
              )}
              {onTop(lines).map((line) => {
                const { stroke, dash } = lookOf(lines, lines.indexOf(line));
                return (
                  // recharts also asks lines about the shade's own points, which have no line
                  <Line
                    key={line.id}
                    dataKey={(point: Partial<Props['points'][number]>) => point.at?.[line.id]}
                    stroke={stroke}
                    strokeDasharray={dash}
                    strokeWidth={line.look === 'load' ? 5 : line.look === 'leave' ? 4 : 3}
                    dot={false}
                    activeDot={false}
                    isAnimationActive={false}
                  />
                );
              })}
              {shade === undefined ? null : (
                <ReferenceDot
                  x={shade.labelX}
                  y={shade.labelY}
                  r={0}
                  label={<ShadeLabel words={shade.label} />}
                />
              )}
            </ComposedChart>
          </ResponsiveContainer>
        </div>
        <EndLabels lines={lines} last={points.at(-1)?.at ?? {}} yMax={yMax} />
      </div>
      <figcaption>
        <LineKeys lines={lines} />
      </figcaption>
    </figure>
  );
}

/** What stays as it is lies over what equals it. */
function onTop(lines: readonly ChartLine[]): ChartLine[] {
  return [...lines].sort((a, b) => Number(a.look === 'leave') - Number(b.look === 'leave'));
}

/** Name of the shaded area on a ground of its own; recharts gives the place. */
function ShadeLabel(props: { readonly words: string; readonly viewBox?: { x?: number; y?: number } }) {
  const { x = 0, y = 0 } = props.viewBox ?? {};
  return (
    <text
      x={x}
      y={y}
      dx={8}
      dy={5}
      fontSize={15}
      fontWeight={700}
      fill="var(--use-strip)"
      stroke="var(--paper)"
      strokeWidth={5}
      paintOrder="stroke"
    >
      {props.words}
    </text>
  );
}

/** Letter of each line (its name where there is room) beside the line's end, moved apart where lines end together. */
function EndLabels(props: {
  readonly lines: readonly ChartLine[];
  readonly last: Readonly<Record<string, number>>;
  readonly yMax: number;
}) {
  const wanted = props.lines.map((line, i) => ({
    line,
    letter: letterOf(i),
    at: MARGIN_PX.top + PLOT_PX * (1 - (props.last[line.id] ?? 0) / props.yMax),
  }));
  const placed = apart([...wanted].sort((a, b) => a.at - b.at));
  return (
    <ul className="plot-labels relative w-16 shrink-0 md:w-52">
      {placed.map(({ line, letter, at }) => (
        <li
          key={line.id}
          className="absolute left-1 flex -translate-y-1/2 items-center gap-1 leading-tight"
          style={{ top: at, height: LABEL_PX }}
        >
          <LinePiece lines={props.lines} id={line.id} />
          <strong>{letter}</strong>
          <span className="hidden md:line-clamp-2">{line.name}</span>
        </li>
      ))}
    </ul>
  );
}

type Placed = { readonly line: ChartLine; readonly letter: string; readonly at: number };

/** Labels from the top, each at least its height below the one before; the whole row is moved up if it runs out. */
function apart(sorted: readonly Placed[]): Placed[] {
  const down: Placed[] = [];
  for (const label of sorted) {
    const above = down.at(-1);
    down.push(above === undefined ? label : { ...label, at: Math.max(label.at, above.at + LABEL_PX) });
  }
  const over = Math.max(0, (down.at(-1)?.at ?? 0) - (HEIGHT_PX - LABEL_PX));
  return down.map((label) => ({ ...label, at: label.at - over }));
}

function letterOf(at: number): string {
  return String.fromCharCode('A'.charCodeAt(0) + at);
}

/** Letter, piece of line and name of every line. */
function LineKeys(props: { readonly lines: readonly ChartLine[] }) {
  return (
    <ul className="plot-keys flex flex-wrap gap-x-6 gap-y-1 md:sr-only">
      {props.lines.map((line, i) => (
        <li key={line.id} className="flex items-center gap-2">
          <LinePiece lines={props.lines} id={line.id} />
          <strong>{letterOf(i)}</strong> {line.name}
        </li>
      ))}
    </ul>
  );
}

/** A piece of a line as it is drawn. */
function LinePiece(props: { readonly lines: readonly ChartLine[]; readonly id: string }) {
  const { stroke, dash } = lookOf(
    props.lines,
    props.lines.findIndex((line) => line.id === props.id),
  );
  return (
    <svg aria-hidden="true" width="36" height="22" viewBox="0 0 36 22" className="shrink-0">
      <line x1="0" x2="36" y1="11" y2="11" stroke={stroke} strokeWidth="3" strokeDasharray={dash} />
    </svg>
  );
}
