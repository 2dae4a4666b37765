/** What every part of a drawing needs: the sheet, what lies on it, how it is painted. */
import type { Composition } from "./composition.ts";
import type { CoverGrid } from "./cover.ts";
import type { Painter } from "./palette.ts";
import type { Scene } from "./scene.ts";
import type { Sheet } from "./sheet.ts";

export interface PlateContext {
  readonly sheet: Sheet;
  readonly scene: Scene;
  readonly composition: Composition;
  readonly cover: CoverGrid;
  readonly paint: Painter;
  /** An id of this drawing alone: the caller's prefix and a name. */
  readonly id: (name: string) => string;
  readonly px: (metres: number) => number;
}
