/** What a hole can hold that a golfer should be warned of. */
export type CautionKind = "cliff" | "water" | "road" | "boundary";
