/** Each kind of claim in English, and what cannot be known of it. */
import { describe, expect, test } from "vitest";
import { BIG_GREEN, GORSE, KINDS, ROAD, SPLIT, tryKinds, WALL, type KindCases } from "./claim-kinds.ts";
import { foundInTip } from "./support.ts";

const CASES: KindCases = {
  uphill: { trips: ["A", "The hole is uphill."], passes: ["B", "The approach is uphill."] },
  downhill: { trips: ["B", "The second is downhill."], passes: ["C", "It is downhill from tee to green."] },
  level: { trips: ["B", "The hole is level."], passes: ["A", "The hole is level."] },
  bends: { trips: ["B", "The hole bends right."], passes: ["B", "The hole bends left."] },
  straight: { trips: ["B", "The hole is straight."], passes: ["A", "The hole is straight."] },
  "two-bends": { trips: ["B", "A double dogleg."], passes: ["D", "A double dogleg."] },
  runs: { trips: ["A", "The hole runs west."], passes: ["A", "The hole runs north."] },
  "along-sea": { trips: ["B", "The hole follows the shore."], passes: ["D", "The hole follows the shore."] },
  length: { trips: ["A", "A 350 yard hole."], passes: ["A", "A 415 yard hole."] },
  par: { trips: ["A", "A long par 5."], passes: ["A", "A long par 4."] },
  "stroke-index": { trips: ["A", "Stroke index 3."], passes: ["A", "Stroke index 5."] },
  longest: { trips: ["E", "The longest hole on the course."], passes: ["D", "The longest hole on the course."] },
  shortest: { trips: ["A", "The shortest of the par 4s."], passes: ["E", "The shortest of the par 4s."] },
  "plays-longer": { trips: ["C", "It plays longer than the card."], passes: ["B", "It plays longer than the card."] },
  "plays-shorter": {
    trips: ["B", "It plays shorter than the card."],
    passes: ["C", "It plays shorter than the card."],
  },
  "clubs-more": {
    trips: ["C", "It plays a club longer than the card."],
    passes: ["B", "The approach plays a club longer than the card."],
  },
  "clubs-less": {
    trips: ["B", "It plays a club less than the card."],
    passes: ["C", "It plays a club less than the card."],
  },
  "reachable-in-two": {
    trips: ["D", "The green is reachable in two."],
    passes: ["A", "The green is reachable in two."],
  },
  "three-shots": { trips: ["B", "A true three shot hole."], passes: ["D", "A true three shot hole."] },
  drivable: { trips: ["A", "A drivable par 4."], passes: ["E", "A drivable par 4."] },
  "forced-carry": { trips: ["E", "The tee shot is all carry."], passes: ["C", "The tee shot is all carry."] },
  "blind-tee-shot": { trips: ["A", "The drive is blind."], passes: ["D", "The drive is blind."] },
  "blind-approach": { trips: ["A", "The second is blind."], passes: ["B", "The second is blind."] },
  "fairway-narrow": { trips: ["A", "The fairway is narrow."], passes: ["B", "The fairway is narrow."] },
  "fairway-wide": { trips: ["B", "The fairway is wide."], passes: ["A", "The fairway is wide."] },
  "fairway-split": { trips: ["B", "A split fairway."], passes: ["A", "A split fairway."], toPass: [SPLIT] },
  "side-slope": { trips: ["D", "The fairway slopes to the left."], passes: ["D", "The fairway slopes to the right."] },
  "tee-raised": {
    trips: ["A", "From an elevated tee you see it all."],
    passes: ["C", "From an elevated tee you see it all."],
  },
  "green-raised": { trips: ["C", "A raised green."], passes: ["B", "A raised green."] },
  "green-sunken": { trips: ["B", "A sunken green."], passes: ["D", "A sunken green."] },
  "green-shallow": { trips: ["A", "A shallow green."], passes: ["B", "A very shallow green."] },
  "green-deep": { trips: ["B", "A deep green."], passes: ["A", "A deep green."] },
  "green-wide": { trips: ["D", "A wide green."], passes: ["C", "A wide green."] },
  "green-narrow": { trips: ["C", "A narrow green."], passes: ["D", "A narrow green."] },
  "green-large": { trips: ["B", "A huge green."], passes: ["A", "A huge green."] },
  "green-small": { trips: ["A", "A tiny green."], passes: ["D", "A tiny green."], toTrip: [BIG_GREEN] },
  "green-flat": { trips: ["A", "The green is flat."], passes: ["D", "The green is flat."] },
  "green-slope": {
    trips: ["A", "The green slopes from front to back."],
    passes: ["A", "The green slopes from back to front."],
  },
  tiers: { trips: ["A", "The green has two tiers."], passes: ["B", "The green has two tiers."] },
  "false-front": { trips: ["A", "It has a false front."], passes: ["B", "It has a false front."] },
  bunker: { trips: ["C", "A bunker waits behind the green."], passes: ["B", "A bunker waits behind the green."] },
  water: { trips: ["E", "A pond lies left of the green."], passes: ["E", "A pond lies right of the green."] },
  "out-of-bounds": {
    trips: ["A", "Out of bounds runs down the left."],
    passes: ["A", "Out of bounds runs down the right."],
  },
  trees: { trips: ["B", "Trees line the right."], passes: ["B", "Trees line the left."] },
  gorse: { trips: ["A", "Gorse lines the right."], passes: ["A", "Gorse lines the left."], more: [GORSE] },
  wall: { trips: ["E", "A wall runs along the right."], passes: ["E", "A wall runs along the left."], more: [WALL] },
  road: {
    trips: ["E", "The road runs along the right."],
    passes: ["E", "The road runs along the left."],
    more: [ROAD],
  },
  "bunker-count": { trips: ["E", "The only bunker is not to be feared."], passes: ["E", "There are three bunkers."] },
  "hazard-distance": {
    trips: ["A", "The bunker is 280 yards from the tee."],
    passes: ["A", "The bunker is 235 yards from the tee."],
  },
  "island-green": { trips: ["E", "An island green."], passes: ["A", "Not a green to miss."] },
};

test("there are at least thirty kinds of claim", () => {
  expect(KINDS.length).toBeGreaterThanOrEqual(30);
});

tryKinds("en", CASES);

describe("what cannot be known", () => {
  test.each([
    ["uphill", "It is uphill all the way."],
    ["green-slope", "The green slopes from front to back."],
    ["blind-tee-shot", "The drive is blind."],
    ["tiers", "The green has two tiers."],
    ["trees", "Trees line the right."],
  ] as const)("%s is a note without heights or a drawing", (kind, tip) => {
    expect(foundInTip(`tip-says-${kind}`, "E", tip)).toMatchObject([{ severity: "note" }]);
  });
});
