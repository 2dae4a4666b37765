/** Why a map is not shown. What is said of it is the page's. */

export type Failure = "data" | "webgl" | "lost";

/** Its cause says the rest. */
export class MapFailure extends Error {
  readonly failure: Failure;

  constructor(failure: Failure, cause: unknown) {
    super(failure, { cause });
    this.name = "MapFailure";
    this.failure = failure;
  }
}
