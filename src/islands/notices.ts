/**
 * Notices that come and go by themselves: the page holds them all, with their days in
 * words; this hides those that do not hold today. Where it does not run, none is missed.
 */
import * as attr from "../contract/attributes.ts";
import { dayOf, showOn } from "./notices-dates.ts";

function show(): void {
  for (const frame of document.querySelectorAll<HTMLElement>(`[${attr.notices}]`)) {
    showOn(dayOf(new Date()), { frame, notices: [...frame.querySelectorAll<HTMLElement>(`[${attr.noticeUntil}]`)] });
  }
}

show();
// A guide stays open in a pocket overnight.
document.addEventListener("visibilitychange", show);
window.addEventListener("pageshow", show);
