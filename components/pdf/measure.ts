/** Heights of named blocks of a laid-out document. [pt] */
export type Heights = {
  readonly of: (name: string) => number;
  /** Sum over all blocks whose name begins so. */
  readonly sum: (prefix: string) => number;
  /** Heights of the blocks `<prefix>0`, `<prefix>1`, ... in order. */
  readonly list: (prefix: string) => readonly number[];
  readonly count: (prefix: string) => number;
  readonly entries: readonly (readonly [string, number])[];
};

type LaidOut = {
  readonly props?: { readonly id?: string };
  readonly box?: { readonly height?: number };
  readonly children?: readonly unknown[];
};

/**
 * Heights of the blocks that carry an id, from the layout that the PDF library hands to `onRender`.
 *
 * @param layout  as handed over; its shape is the library's own and checked by tests/pdf/measure.test.tsx
 */
export function heightsOf(layout: unknown): Heights {
  const found = new Map<string, number>();
  collect(layout, found);
  return heightsFrom(found);
}

/**
 * Heights between those of two layouts of the same blocks, on a straight line.
 *
 * @param share  0 = the first, 1 = the second
 */
export function heightsBetween(first: Heights, second: Heights, share: number): Heights {
  return heightsFrom(
    new Map(first.entries.map(([name, height]) => [name, height + (second.of(name) - height) * share])),
  );
}

function heightsFrom(found: ReadonlyMap<string, number>): Heights {
  const entries = [...found];
  const starting = (prefix: string) => entries.filter(([name]) => name.startsWith(prefix));
  return {
    of: (name) => found.get(name) ?? 0,
    sum: (prefix) => starting(prefix).reduce((sum, [, height]) => sum + height, 0),
    list: (prefix) =>
      Array.from({ length: starting(prefix).length }, (_, i) => found.get(`${prefix}${i}`) ?? 0),
    count: (prefix) => starting(prefix).length,
    entries,
  };
}

function collect(node: unknown, found: Map<string, number>): void {
  if (typeof node !== 'object' || node === null) return;
  const { props, box, children } = node as LaidOut;
  if (props?.id !== undefined && box?.height !== undefined)
    found.set(props.id, (found.get(props.id) ?? 0) + box.height);
  for (const child of children ?? []) collect(child, found);
}

/** How many pages a laid-out document takes. */
export function pagesOf(layout: unknown): number {
  return (layout as LaidOut | undefined)?.children?.length ?? 0;
}
