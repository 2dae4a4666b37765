/** What the control says that keeps the guide on a device. Filled in by the browser: {size}, {done}. */
import type { KeepFault } from "./messages.ts";

export interface KeepWords {
  readonly keep: string;
  readonly before: string;
  readonly keeping: string;
  readonly stop: string;
  readonly kept: string;
  readonly newer: string;
  readonly update: string;
  /** The page still shows the edition before. */
  readonly stale: string;
  readonly reload: string;
  readonly remove: string;
  readonly removed: string;
  readonly again: string;
  /** With {number}: millions of bytes. */
  readonly megabytes: string;
  readonly faults: Readonly<Record<KeepFault | "unsupported", string>>;
}
