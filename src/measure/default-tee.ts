/** The tee set that counts until a golfer chooses one: the course's own, or else the longest there is. */
import type { Course, TeeSet } from "../course/types.ts";
import type { MeasuredHole, TeeFigures } from "./types.ts";

/** Of some of a hole's tees, longest first; undefined without any. */
export const defaultAmong = (tees: readonly TeeFigures[], { defaultTee: id }: Course): TeeFigures | undefined =>
  tees.find(({ tee }) => tee.id === id) ?? tees[0];

export const defaultTee = ({ tees, course }: MeasuredHole): TeeFigures | undefined => defaultAmong(tees, course);

/** A course may have holes without its default set; the course itself has it. */
export const defaultTeeSet = ({ tees, defaultTee: id }: Course): TeeSet | undefined =>
  tees.find((tee) => tee.id === id) ?? tees[0];
