export type Search = Promise<Readonly<Record<string, string | string[] | undefined>>>;

/** What stands in the address, each key once. */
export async function textsOf(search: Search): Promise<Readonly<Record<string, string>>> {
  return Object.fromEntries(
    Object.entries(await search).flatMap(([key, value]) => (typeof value === 'string' ? [[key, value]] : [])),
  );
}
