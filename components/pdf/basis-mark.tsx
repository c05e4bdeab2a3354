import { Circle, Polygon, Rect, Svg } from '@react-pdf/renderer';
import type { Basis } from '@/lib/visit/basis';
import { ink } from './look';

const line = { stroke: ink.text, strokeWidth: 0.9 } as const;

/** Sign for where a number came from; its words stand in the line of counts. */
export function BasisMark({ basis }: { readonly basis: Basis }) {
  return (
    <Svg width={10} height={10} viewBox="0 0 10 10" style={{ marginTop: 1.5, marginRight: 1 }}>
      {marks[basis]}
    </Svg>
  );
}

const marks = {
  measured: <Circle cx={4} cy={5} r={2.6} fill={ink.text} />,
  nameplate: <Rect x={1.4} y={2.4} width={5.2} height={5.2} fill={ink.text} />,
  bill: <Polygon points="4,1.8 7.2,7.6 0.8,7.6" fill={ink.text} />,
  assumed: <Circle cx={4} cy={5} r={2.6} fill={ink.paper} {...line} />,
} as const;
