/** Dates as people read them. */
export { longDate } from "../tell/dates.ts";
