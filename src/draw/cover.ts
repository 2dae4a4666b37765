/**
 * What lies on top at each place of the sheet, on a coarse grid: so that tufts keep off
 * the fairway and labels prefer open ground.
 */
import type { GroundCover } from "../course/kinds.ts";
import type { Box } from "../geo/box.ts";
import type { Point } from "../geo/position.ts";
import { distanceToPiece } from "../geo/segment.ts";

export type Cover = Exclude<GroundCover, "none"> | "open" | "taken";

/** Roughly where some covers are. */
export interface CoverMask {
  readonly empty: boolean;
  /** Distance from a place within which none of them is, sheet units; 0 where one may be. */
  gap(x: number, y: number): number;
}

/** Side of a mask's cells, in those of the cover. */
const MASK_CELLS = 2;

const COVERS: readonly Cover[] = [
  "open",
  "rough",
  "heath",
  "scrub",
  "wood",
  "rock",
  "strand",
  "water",
  "fairway",
  "green",
  "tee",
  "bunker",
  "built",
  "taken",
];

export class CoverGrid {
  readonly box: Box;
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
  readonly codes: Uint8Array;
  /** Covers that were laid anywhere, some of them since covered over. */
  private readonly laid = new Set<Cover>(["open"]);

  constructor(box: Box, cell: number) {
    this.box = box;
    this.cell = cell;
    this.columns = Math.ceil((box[2] - box[0]) / cell);
    this.rows = Math.ceil((box[3] - box[1]) / cell);
    this.codes = new Uint8Array(this.columns * this.rows);
  }

  /** Lays an area (even-odd) over what is there; cells count by their middles. */
  fill(rings: readonly (readonly Point[])[], cover: Cover): void {
    this.laid.add(cover);
    const code = COVERS.indexOf(cover);
    // Where the outline crosses the middle of each row it reaches.
    const hits: number[][] = [];
    for (const ring of rings) {
      for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
        const [x1, y1] = ring[j]!;
        const [x2, y2] = ring[i]!;
        const first = Math.max(0, Math.floor((Math.min(y1, y2) - this.box[1]) / this.cell) - 1);
        const last = Math.min(this.rows - 1, Math.ceil((Math.max(y1, y2) - this.box[1]) / this.cell) + 1);
        for (let row = first; row <= last; row++) {
          const y = this.box[1] + (row + 0.5) * this.cell;
          if (y1 > y !== y2 > y) (hits[row] ??= []).push(x1 + ((y - y1) / (y2 - y1)) * (x2 - x1));
        }
      }
    }
    hits.forEach((row, r) => {
      row.sort((a, b) => a - b);
      for (let i = 0; i + 1 < row.length; i += 2) {
        const from = Math.max(0, Math.ceil((row[i]! - this.box[0]) / this.cell - 0.5));
        const to = Math.min(this.columns - 1, Math.floor((row[i + 1]! - this.box[0]) / this.cell - 0.5));
        if (from <= to) this.codes.fill(code, r * this.columns + from, r * this.columns + to + 1);
      }
    });
  }

  /** Lays a band of a width along a line. */
  stroke(line: readonly Point[], width: number, cover: Cover): void {
    this.laid.add(cover);
    const code = COVERS.indexOf(cover);
    const reach = width / 2;
    for (let i = 1; i < line.length; i++) {
      const [a, b] = [line[i - 1]!, line[i]!];
      this.eachCell(
        [
          Math.min(a[0], b[0]) - reach,
          Math.min(a[1], b[1]) - reach,
          Math.max(a[0], b[0]) + reach,
          Math.max(a[1], b[1]) + reach,
        ],
        (index, x, y) => {
          if (distanceToPiece(a, b, x, y) <= reach) this.codes[index] = code;
        },
      );
    }
  }

  at([x, y]: Point): Cover {
    return this.coverAt(x, y);
  }

  private coverAt(x: number, y: number): Cover {
    const column = Math.floor((x - this.box[0]) / this.cell);
    const row = Math.floor((y - this.box[1]) / this.cell);
    if (column < 0 || row < 0 || column >= this.columns || row >= this.rows) return "taken";
    return COVERS[this.codes[row * this.columns + column]!]!;
  }

  /** Whether a mark that reaches so far from a point stays on ground for which `allowed` holds. */
  clear([x, y]: Point, reach: number, allowed: (cover: Cover) => boolean): boolean {
    return (
      allowed(this.coverAt(x, y)) &&
      allowed(this.coverAt(x - reach, y)) &&
      allowed(this.coverAt(x + reach, y)) &&
      allowed(this.coverAt(x, y - reach)) &&
      allowed(this.coverAt(x, y + reach))
    );
  }

  /** Where those covers are for which `allowed` holds, and what lies within `reach` of them. */
  mask(reach: number, allowed: (cover: Cover) => boolean): CoverMask {
    if (![...this.laid].some(allowed)) return { empty: true, gap: () => 0 };
    const wanted = COVERS.map(allowed);
    const side = this.cell * MASK_CELLS;
    const columns = Math.ceil(this.columns / MASK_CELLS);
    const rows = Math.ceil(this.rows / MASK_CELLS);
    // Cells of the mask between each and the nearest that is marked, as a king moves.
    const steps = new Uint16Array(columns * rows).fill(0xffff);
    let empty = true;
    for (let row = 0; row < this.rows; row++) {
      for (let column = 0; column < this.columns; column++) {
        if (!wanted[this.codes[row * this.columns + column]!]) continue;
        steps[Math.floor(row / MASK_CELLS) * columns + Math.floor(column / MASK_CELLS)] = 0;
        empty = false;
      }
    }
    if (!empty) spread(steps, columns, rows);
    return {
      empty,
      gap: (x, y) => {
        const [column, row] = [Math.floor((x - this.box[0]) / side), Math.floor((y - this.box[1]) / side)];
        if (column < 0 || row < 0 || column >= columns || row >= rows) return 0;
        // A place anywhere in its cell, from the near edge of the other.
        return Math.max(0, (steps[row * columns + column]! - 1) * side - reach);
      },
    };
  }

  eachCell(box: Box, visit: (index: number, x: number, y: number) => void): void {
    const [c0, c1] = [box[0], box[2]].map((x) => Math.floor((x - this.box[0]) / this.cell)) as [number, number];
    const [r0, r1] = [box[1], box[3]].map((y) => Math.floor((y - this.box[1]) / this.cell)) as [number, number];
    for (let row = Math.max(0, r0); row <= Math.min(this.rows - 1, r1); row++) {
      for (let column = Math.max(0, c0); column <= Math.min(this.columns - 1, c1); column++) {
        visit(
          row * this.columns + column,
          this.box[0] + (column + 0.5) * this.cell,
          this.box[1] + (row + 0.5) * this.cell,
        );
      }
    }
  }
}

/** Turns marks (0) among unknown numbers into moves of a king from the nearest mark, in two passes. */
function spread(steps: Uint16Array, columns: number, rows: number): void {
  const ease = (at: number, row: number, column: number): void => {
    if (row < 0 || column < 0 || row >= rows || column >= columns) return;
    const from = steps[row * columns + column]!;
    if (from + 1 < steps[at]!) steps[at] = from + 1;
  };
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const at = row * columns + column;
      ease(at, row, column - 1);
      for (let c = column - 1; c <= column + 1; c++) ease(at, row - 1, c);
    }
  }
  for (let row = rows - 1; row >= 0; row--) {
    for (let column = columns - 1; column >= 0; column--) {
      const at = row * columns + column;
      ease(at, row, column + 1);
      for (let c = column - 1; c <= column + 1; c++) ease(at, row + 1, c);
    }
  }
}
