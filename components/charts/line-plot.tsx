'use client';

import { CartesianGrid, Label, Line, LineChart, ResponsiveContainer, XAxis, YAxis } from 'recharts';
import type { ChartLine } from '@/components/appraisal/chart-view';
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
};

/** Height of the class `h-96`, which the plot has. */
const HEIGHT_PX = 384;
const MARGIN_PX = { top: 16, right: 4, bottom: 28, left: 4 };
const X_AXIS_PX = 30;
const PLOT_PX = HEIGHT_PX - MARGIN_PX.top - MARGIN_PX.bottom - X_AXIS_PX;
const LABEL_PX = 44;

/** Lines on zero-based axes with their names at their ends; nothing is told by hovering. */
export function LinePlot(props: Props) {
  const { lines, points } = props;
  const yMax = props.yTicks.at(-1) ?? 1;
  return (
    <figure className="mt-2">
      <p aria-hidden="true" className="text-soft">
        {props.yWords}
      </p>
      <div aria-hidden="true" className="plot flex h-96">
        <div className="min-w-0 flex-1">
          <ResponsiveContainer width="100%" height="100%">
            <LineChart data={[...points]} margin={MARGIN_PX} accessibilityLayer={false}>
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
              {lines.map((line, i) => {
                const { stroke, dash } = lookOf(lines, i);
                return (
                  <Line
                    key={line.id}
                    dataKey={(point: Props['points'][number]) => point.at[line.id] ?? 0}
                    stroke={stroke}
                    strokeDasharray={dash}
                    strokeWidth={line.look === 'load' ? 5 : 3}
                    dot={false}
                    activeDot={false}
                    isAnimationActive={false}
                  />
                );
              })}
            </LineChart>
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
