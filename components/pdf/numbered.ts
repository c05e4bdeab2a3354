/** Items with their place as key, for lists that never change order and may hold equal texts. */
export function numbered<T>(items: readonly T[]): { readonly key: string; readonly item: T }[] {
  return items.map((item, place) => ({ key: String(place), item }));
}
