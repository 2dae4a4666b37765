/** What the guide says on paper: pocket book, scorecard and tee signs. */
import type { CautionKind } from "../course/kinds.ts";

export interface PaperWords {
  readonly book: {
    readonly title: string;
    /** Title of the document: what it is and of which course. */
    readonly documentTitle: (course: string) => string;
    readonly figuresFrom: (tees: string, unit: string) => string;
    readonly fromTee: (tee: string) => string;
    readonly howTo: string;
    /** What stands where, in order; each a term and its meaning. */
    readonly howToRead: readonly { readonly mark: "plate" | "arc" | "left" | "hazard" | "bend" | "figures" | "landing" | "green"; readonly term: string; readonly meaning: string }[];
    readonly limits: string;
    readonly limitsText: readonly string[];
    readonly landing: string;
    readonly drive: string;
    readonly wide: string;
    readonly left: string;
    readonly right: string;
    readonly leaves: string;
    readonly offFairway: string;
    readonly clear: string;
    readonly noTrouble: string;
    readonly notes: string;
    readonly scale: (denominator: string) => string;
    readonly greenScale: (denominator: string) => string;
    /** Left and right, as short as they go. */
    readonly sides: { readonly left: string; readonly right: string; readonly across: string; readonly beyond: string };
    readonly continued: (title: string) => string;
    readonly screenNote: string;
    readonly print: string;
    readonly backToGuide: string;
  };
  readonly care: string;
  /** What a hole runs by, in as few words as will do. */
  readonly nearby: Readonly<Record<CautionKind, string>>;
  readonly careRule: string;
  readonly card: {
    readonly documentTitle: (course: string) => string;
    readonly player: (letter: string) => string;
    readonly date: string;
    readonly competition: string;
    readonly tees: string;
    /** Heads a narrow row. */
    readonly strokeIndex: string;
    /** Heads a narrow column. */
    readonly total: string;
    readonly marker: string;
    readonly markerSignature: string;
    readonly playerSignature: string;
    readonly net: string;
    readonly handicap: string;
    readonly dots: string;
    readonly given: string;
    /** The allowance a Playing Handicap was worked out with. */
    readonly allowance: (percent: number) => string;
    readonly certified: string;
  };
  readonly sign: {
    readonly documentTitle: (course: string) => string;
    readonly scan: string;
    /** What the figures on the plate are measured from. */
    readonly figuresFrom: (tee: string, unit: string) => string;
  };
}
