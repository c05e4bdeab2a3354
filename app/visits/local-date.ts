/** Calendar date of an instant where this server stands ("2026-11-25"). */
export function localDate(at: Date): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}
