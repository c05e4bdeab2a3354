import { Line } from '@react-pdf/renderer';
import { ink } from './look';

type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
type Stroke = { readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number };

/** Diagonal strokes that fill a box, cut at its edges; the printer's stand-in for a colour. */
export function hatchStrokes({ x, y, width, height }: Box, spacing: number): Stroke[] {
  const strokes: Stroke[] = [];
  for (let start = spacing - height; start < width; start += spacing) {
    const from = Math.max(0, -start);
    const to = Math.min(height, width - start);
    if (to <= from) continue;
    strokes.push({
      x1: x + start + from,
      y1: y + height - from,
      x2: x + start + to,
      y2: y + height - to,
    });
  }
  return strokes;
}

/** Hatching for a box in a drawing. */
export function Hatching(box: Box & { readonly spacing: number }) {
  return (
    <>
      {hatchStrokes(box, box.spacing).map((s) => (
        <Line key={`${s.x1} ${s.y1}`} {...s} stroke={ink.text} strokeWidth={0.7} />
      ))}
    </>
  );
}
