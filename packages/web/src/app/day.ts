/** A day as a person writes it here; a day without its time is that day wherever one is. */
export function dayText(iso: string): string {
  const day = new Date(/^\d{4}-\d\d-\d\d$/.test(iso) ? `${iso}T12:00:00` : iso);
  return Number.isNaN(day.getTime()) ? iso : day.toLocaleDateString(undefined, { dateStyle: 'medium' });
}
