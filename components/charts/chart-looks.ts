import type { LineLook } from '@/components/appraisal/chart-view';

/** Colour and dash of a line, so that a black-and-white copy still tells them apart. */
export const LOOKS: Readonly<
  Record<LineLook, { readonly stroke: string; readonly dash: readonly string[] }>
> = {
  leave: { stroke: 'var(--leave)', dash: ['2 4', '2 7'] },
  repair: { stroke: 'var(--repair)', dash: ['9 4', '9 4 2 4', '14 4'] },
  repairThenReplace: { stroke: 'var(--repair)', dash: ['5 2 1 2', '7 2 1 2 1 2'] },
  replace: { stroke: 'var(--replace)', dash: ['0', '16 3 3 3', '16 3 3 3 3 3'] },
  load: { stroke: 'var(--ink)', dash: ['0'] },
  healthy: { stroke: 'var(--plum)', dash: ['5 3'] },
};

/** Look of the n-th line of its kind. */
export function lookOf(lines: readonly { readonly look: LineLook }[], at: number) {
  const look = lines[at]?.look ?? 'leave';
  const nth = lines.slice(0, at).filter((line) => line.look === look).length;
  const { stroke, dash } = LOOKS[look];
  return { stroke, dash: dash[nth % dash.length] ?? '0' };
}
