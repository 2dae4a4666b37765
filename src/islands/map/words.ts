/** What the live map says. */

export const WORDS = {
  open: "Open live map",
  loading: "Opening the live map…",
  close: "Close map",
  zoomIn: "Zoom in",
  zoomOut: "Zoom out",
  reset: "Whole hole",
  resetCourse: "Whole course",
  controls: "Map controls",
  holeMap: (hole: number, name: string): string => `Live map of hole ${hole}, ${name}`,
  courseMap: (course: string): string => `Live map of ${course}`,
  holeKeys: "Arrow keys move the map, plus and minus zoom, Enter measures at the cross in the middle, Escape closes the map.",
  courseKeys: "Arrow keys move the map, plus and minus zoom, Enter opens the hole at the cross in the middle, Escape closes the map.",
  holeHint: "Tap anywhere to measure from the tee and on to the green.",
  courseHint: "Tap a hole to open its page.",
  noHole: "No hole there: move the cross onto a hole’s line.",
  wheel: (key: string): string => `Hold ${key} and scroll to zoom`,
  touch: "Two fingers move the map",
  failed: {
    data: "The live map could not be loaded just now. The drawn sheet and the lists hold the same figures.",
    webgl: "This browser cannot show the live map (it needs WebGL 2). The drawn sheet and the lists hold the same figures.",
    lost: "The live map stopped: the device took its drawing memory back. Open it again, or use the drawn sheet.",
  },
} as const;

export type Failure = keyof typeof WORDS.failed;

/** Why a map is not shown; its cause says the rest. */
export class MapFailure extends Error {
  readonly failure: Failure;

  constructor(failure: Failure, cause: unknown) {
    super(WORDS.failed[failure], { cause });
    this.name = "MapFailure";
    this.failure = failure;
  }
}
