/** Notices that come and go by the golfer's own clock. */
import { afterEach, describe, expect, test } from "vitest";
import { dataset } from "../../src/contract/dataset.ts";
import { dayOf, holdsOn, showOn, type NoticeElement } from "../../src/islands/notices-dates.ts";

const zone = process.env["TZ"];
afterEach(() => {
  if (zone === undefined) delete process.env["TZ"];
  else process.env["TZ"] = zone;
});

describe("the day it is", () => {
  test("is the golfer's own: one instant is two days on either side of the date line", () => {
    const instant = new Date("2026-11-01T11:00:00Z");
    process.env["TZ"] = "Pacific/Kiritimati";
    expect(dayOf(instant)).toBe("2026-11-02");
    process.env["TZ"] = "Pacific/Niue";
    expect(dayOf(instant)).toBe("2026-11-01");
  });
  test("does not slip on the nights clocks change", () => {
    process.env["TZ"] = "Europe/London";
    expect([dayOf(new Date("2026-03-29T00:30:00Z")), dayOf(new Date("2026-10-25T23:30:00Z"))]).toEqual([
      "2026-03-29",
      "2026-10-25",
    ]);
  });
});

test.each([
  ["2026-10-31", false],
  ["2026-11-01", true],
  ["2026-12-31", true],
  ["2027-01-01", true],
  ["2027-02-28", true],
  ["2027-03-01", false],
])("1 November 2026 to 28 February 2027 holds on %s: %s", (day, holds) => {
  expect(holdsOn(day, "2026-11-01", "2027-02-28")).toBe(holds);
});

test("without a first day it holds at once, to the end of its last", () => {
  expect(["1999-01-01", "2027-02-28", "2027-03-01"].map((day) => holdsOn(day, undefined, "2027-02-28"))).toEqual([
    true,
    true,
    false,
  ]);
});

describe("a list in a page", () => {
  const list = () => {
    const notice = (written: Record<string, string>): NoticeElement => ({
      getAttribute: (name) => written[name] ?? null,
      hidden: false,
    });
    const notices = [
      notice(dataset({ noticeFrom: "2026-11-01", noticeUntil: "2027-02-28" })),
      notice(dataset({ noticeUntil: "2026-11-30" })),
    ];
    return { notices, frame: { hidden: false } };
  };
  const seen = (day: string): [boolean[], boolean] => {
    const made = list();
    showOn(day, made);
    return [made.notices.map(({ hidden }) => !hidden), !made.frame.hidden];
  };

  test("shows what holds, and is gone when nothing does", () => {
    expect(seen("2026-10-01")).toEqual([[false, true], true]);
    expect(seen("2026-11-15")).toEqual([[true, true], true]);
    expect(seen("2026-12-15")).toEqual([[true, false], true]);
    expect(seen("2027-06-01")).toEqual([[false, false], false]);
  });

  test("comes back in a page that stayed open over midnight", () => {
    const made = list();
    showOn("2027-03-01", made);
    expect(made.frame.hidden).toBe(true);
    showOn("2027-02-28", made);
    expect([made.frame.hidden, made.notices.map(({ hidden }) => hidden)]).toEqual([false, [false, true]]);
  });
});
