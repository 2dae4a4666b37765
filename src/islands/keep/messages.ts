/** What the page and the service worker say to each other. */

/** From the page. `adopt`: the page is of this edition itself, so its further requests may be answered from it. */
export type Order =
  | { readonly type: "keep" }
  | { readonly type: "stop" }
  | { readonly type: "forget" }
  | { readonly type: "adopt"; readonly edition: string };

/**
 * Why keeping failed. `network`: a file could not be fetched; `changed`: what came is not
 * what the edition lists; `full`: the device has no room; `refused`: it allows no storage.
 */
export type KeepFault = "network" | "changed" | "full" | "refused";

/** From the worker, to every open page of the guide. */
export type Report =
  | { readonly type: "progress"; readonly edition: string; readonly doneBytes: number; readonly bytes: number }
  | { readonly type: "kept"; readonly edition: string }
  | { readonly type: "failed"; readonly fault: KeepFault }
  | { readonly type: "forgotten" };
