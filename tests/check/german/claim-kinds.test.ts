/** Each kind of claim in German. */
import { describe, expect, test } from "vitest";
import { foundInTip } from "../support.ts";
import { BIG_GREEN, GORSE, ROAD, SPLIT, tryKinds, WALL, type KindCases } from "../claim-kinds.ts";

const CASES: KindCases = {
  uphill: { trips: ["A", "Die Bahn steigt zum Grün hin an."], passes: ["B", "Die Annäherung geht bergauf."] },
  downhill: { trips: ["B", "Der zweite Schlag geht bergab."], passes: ["C", "Vom Abschlag geht es hinunter."] },
  level: { trips: ["B", "Die Bahn ist eben."], passes: ["A", "Die Bahn ist eben."] },
  bends: { trips: ["B", "Die Bahn knickt nach rechts ab."], passes: ["B", "Die Bahn knickt nach links ab."] },
  straight: { trips: ["B", "Das Loch ist schnurgerade."], passes: ["A", "Das Loch ist schnurgerade."] },
  "two-bends": { trips: ["B", "Ein Doppeldogleg."], passes: ["D", "Ein Doppeldogleg."] },
  runs: { trips: ["A", "Die Bahn führt nach Westen."], passes: ["A", "Die Bahn führt nach Norden."] },
  "along-sea": { trips: ["B", "Es geht an der Küste entlang."], passes: ["D", "Es geht an der Küste entlang."] },
  length: { trips: ["A", "Ein 320 Meter langes Loch."], passes: ["A", "Ein 380 Meter langes Loch."] },
  par: { trips: ["A", "Ein langes Par 5."], passes: ["A", "Ein langes Par 4."] },
  "stroke-index": { trips: ["A", "Vorgabe 3."], passes: ["A", "Vorgabe 5."] },
  longest: { trips: ["E", "Das längste Loch des Platzes."], passes: ["D", "Das längste Loch des Platzes."] },
  shortest: { trips: ["A", "Das kürzeste der Par 4."], passes: ["E", "Das kürzeste der Par 4."] },
  "plays-longer": {
    trips: ["C", "Das Loch spielt sich länger als angegeben."],
    passes: ["B", "Das Loch spielt sich länger als angegeben."],
  },
  "plays-shorter": {
    trips: ["B", "Das Loch spielt sich kürzer als angegeben."],
    passes: ["C", "Das Loch spielt sich kürzer als angegeben."],
  },
  "clubs-more": {
    trips: ["C", "Das Loch spielt sich einen Schläger länger."],
    passes: ["B", "Die Annäherung spielt sich einen Schläger länger."],
  },
  "clubs-less": {
    trips: ["B", "Die Annäherung spielt sich einen Schläger kürzer."],
    passes: ["C", "Das Loch spielt sich einen Schläger kürzer."],
  },
  "reachable-in-two": {
    trips: ["D", "Das Grün ist mit zwei Schlägen erreichbar."],
    passes: ["A", "Das Grün ist mit 2 Schlägen erreichbar."],
  },
  "three-shots": { trips: ["A", "Ein echtes Drei-Schläge-Loch."], passes: ["D", "Ein echtes Drei-Schläge-Loch."] },
  drivable: {
    trips: ["A", "Das Grün ist mit dem Drive erreichbar."],
    passes: ["E", "Das Grün ist mit dem Drive erreichbar."],
  },
  "forced-carry": {
    trips: ["A", "Der Abschlag muss über das Wasser getragen werden."],
    passes: ["C", "Der Abschlag muss über das Wasser getragen werden."],
  },
  "blind-tee-shot": { trips: ["A", "Der Abschlag ist blind."], passes: ["D", "Der Abschlag ist blind."] },
  "blind-approach": { trips: ["A", "Die Annäherung ist blind."], passes: ["B", "Die Annäherung ist blind."] },
  "fairway-narrow": { trips: ["A", "Das Fairway ist schmal."], passes: ["B", "Das Fairway ist schmal."] },
  "fairway-wide": { trips: ["B", "Ein großzügiges Fairway."], passes: ["A", "Ein großzügiges Fairway."] },
  "fairway-split": {
    trips: ["A", "Das Fairway teilt sich."],
    passes: ["A", "Das Fairway teilt sich."],
    toPass: [SPLIT],
  },
  "side-slope": { trips: ["D", "Das Fairway hängt nach links."], passes: ["D", "Das Fairway hängt nach rechts."] },
  "tee-raised": { trips: ["A", "Ein erhöhter Abschlag."], passes: ["C", "Ein erhöhter Abschlag."] },
  "green-raised": { trips: ["D", "Das Grün liegt erhöht."], passes: ["B", "Das Grün liegt erhöht."] },
  "green-sunken": { trips: ["B", "Das Grün liegt in einer Senke."], passes: ["D", "Das Grün liegt in einer Senke."] },
  "green-shallow": { trips: ["A", "Das Grün hat wenig Tiefe."], passes: ["B", "Das Grün hat wenig Tiefe."] },
  "green-deep": { trips: ["B", "Ein tiefes Grün."], passes: ["A", "Ein tiefes Grün."] },
  "green-wide": { trips: ["D", "Das Grün ist breit."], passes: ["B", "Das Grün ist breit."] },
  "green-narrow": { trips: ["B", "Ein schmales Grün."], passes: ["A", "Ein schmales Grün."] },
  "green-large": { trips: ["D", "Ein riesiges Grün."], passes: ["A", "Ein riesiges Grün."] },
  "green-small": { trips: ["A", "Das Grün ist klein."], passes: ["D", "Das Grün ist klein."], toTrip: [BIG_GREEN] },
  "green-flat": { trips: ["A", "Das Grün ist eben."], passes: ["D", "Das Grün ist eben."] },
  "green-slope": { trips: ["A", "Das Grün fällt nach hinten ab."], passes: ["A", "Das Grün fällt nach vorn ab."] },
  tiers: { trips: ["A", "Das Grün ist zweistufig."], passes: ["B", "Das Grün ist zweistufig."] },
  "false-front": { trips: ["A", "Es hat eine False Front."], passes: ["B", "Es hat eine False Front."] },
  bunker: { trips: ["C", "Hinter dem Grün wartet ein Bunker."], passes: ["B", "Hinter dem Grün wartet ein Bunker."] },
  water: { trips: ["E", "Links vom Grün liegt ein Teich."], passes: ["E", "Rechts vom Grün liegt ein Teich."] },
  "out-of-bounds": { trips: ["A", "Links ist Aus."], passes: ["A", "Rechts ist Aus."] },
  trees: { trips: ["B", "Bäume säumen die rechte Seite."], passes: ["B", "Bäume säumen die linke Seite."] },
  gorse: { trips: ["A", "Rechts steht Ginster."], passes: ["A", "Links steht Ginster."], more: [GORSE] },
  wall: {
    trips: ["E", "Rechts verläuft eine Steinmauer."],
    passes: ["E", "Links verläuft eine Steinmauer."],
    more: [WALL],
  },
  road: { trips: ["E", "Rechts verläuft die Straße."], passes: ["E", "Links verläuft die Straße."], more: [ROAD] },
  "bunker-count": { trips: ["E", "Nur ein Bunker verteidigt das Grün."], passes: ["E", "Es gibt drei Bunker."] },
  "hazard-distance": {
    trips: ["A", "Der Bunker liegt 260 Meter vom Abschlag."],
    passes: ["A", "Der Bunker liegt 215 Meter vom Abschlag."],
  },
  "island-green": { trips: ["E", "Ein Inselgrün."], passes: ["A", "Kein Grün, das man verfehlen will."] },
};

tryKinds("de", CASES);

describe("kinds of claim in German, denied", () => {
  // A pattern that finds nothing would pass as borne out, so what is borne out is turned round by a denial or a side
  // where it can be.
  test.each([
    ["bunker", "B", "Hinter dem Grün wartet kein Bunker."],
    ["water", "E", "Rechts vom Grün liegt kein Teich."],
    ["out-of-bounds", "A", "Rechts ist kein Aus."],
    ["blind-tee-shot", "D", "Der Abschlag ist nicht blind."],
    ["false-front", "B", "Es hat keine False Front."],
    ["longest", "D", "Das längste Loch des Platzes ist es nicht."],
    ["bends", "B", "Die Bahn knickt nicht nach links ab."],
  ] as const)("%s: denied where it is so", (kind, hole, tip) => {
    expect(foundInTip(`tip-says-${kind}`, hole, tip, [], "de")).toMatchObject([{ severity: "error" }]);
  });
});
