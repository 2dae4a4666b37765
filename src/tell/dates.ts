/** Dates as people read them. */

/**
 * "14 May 2026" for an ISO date. Read and written in UTC, so that the day never slips with
 * the clock of the machine that builds. A date that is not one is given back as written.
 */
export function longDate(iso: string, locale: string): string {
  const date = new Date(`${iso.slice(0, 10)}T00:00:00Z`);
  if (Number.isNaN(date.getTime())) return iso;
  return new Intl.DateTimeFormat(locale, { day: "numeric", month: "long", year: "numeric", timeZone: "UTC" }).format(date);
}
