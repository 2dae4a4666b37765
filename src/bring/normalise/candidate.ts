/** A brought feature as one that a page could hold: its tags, kind and shape. */
import type { CheckedGeometry } from "../../course/schema/geometry.ts";
import type { Tags } from "../../course/schema/vocabulary.ts";
import type { FeatureKind } from "../../course/types.ts";
import type { CardTags } from "./card-tags.ts";

export interface Candidate {
  readonly from: string;
  readonly key: string | undefined;
  /** Its id in an earlier export of ours. */
  readonly id: string | undefined;
  /** The hole the file says, or `all` where an export of ours says that holes share it. */
  readonly hole: number | "all" | undefined;
  readonly kind: FeatureKind;
  readonly tags: Tags;
  readonly geometry: CheckedGeometry;
  /** Why what it is, is a guess. */
  readonly guess: string | undefined;
  /** Of a line of play: what it says of its hole. */
  readonly card: CardTags | undefined;
}

/** A tee set of the course, which markers must name. */
export interface TeeSet {
  readonly id: string;
  readonly name: string;
}
