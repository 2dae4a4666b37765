/** Days of a calendar. */

/**
 * An ISO date as messages take it: "14 May 2026". Read and written in UTC, so that the day
 * never slips with the clock of the machine that builds.
 */
export const dayOf = (iso: string): Date => new Date(`${iso.slice(0, 10)}T00:00:00Z`);
