/** Time of day of an instant, as this device writes it ("14:32"). */
export function timeWords(at: number): string {
  return new Intl.DateTimeFormat('en-US', { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }).format(
    at,
  );
}

/** A calendar date ("Nov 25, 2026"); anything unreadable as it is. */
export function dateWords(isoDate: string): string {
  const at = Date.parse(`${isoDate}T00:00:00Z`);
  if (Number.isNaN(at)) return isoDate;
  return new Intl.DateTimeFormat('en-US', { dateStyle: 'medium', timeZone: 'UTC' }).format(at);
}
