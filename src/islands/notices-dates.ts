/** Which notices hold on a day. Dates are ISO, which sort as they run. */
import * as attr from "../contract/attributes.ts";

/** A list of notices as they stand in the page, and each one's days. */
export interface NoticeElement {
  getAttribute(name: string): string | null;
  hidden: HTMLElement["hidden"];
}

export interface NoticeList {
  readonly notices: readonly NoticeElement[];
  /** Hidden when none of its notices holds. */
  readonly frame: Pick<NoticeElement, "hidden">;
}

/** The day it is where the golfer stands: their own clock, not the club's nor the server's. */
export function dayOf(now: Date): string {
  const part = (value: number): string => String(value).padStart(2, "0");
  return `${String(now.getFullYear()).padStart(4, "0")}-${part(now.getMonth() + 1)}-${part(now.getDate())}`;
}

/** The first and the last day are part of it; without a first one it holds at once. */
export const holdsOn = (day: string, from: string | undefined, until: string): boolean =>
  (from === undefined || from <= day) && day <= until;

/** Shows what holds on a day and hides the rest. */
export function showOn(day: string, { notices, frame }: NoticeList): void {
  for (const notice of notices) {
    const [from, until] = [notice.getAttribute(attr.noticeFrom), notice.getAttribute(attr.noticeUntil)];
    notice.hidden = until !== null && !holdsOn(day, from ?? undefined, until);
  }
  frame.hidden = notices.every(({ hidden }) => hidden === true);
}
