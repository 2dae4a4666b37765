/** How German words are read: endings, compounds, names in their cases, stops that end no sentence, advice. */
import { describe, expect, test } from "vitest";
import { claimKey } from "../scoring.ts";
import { findClaims } from "../../../src/check/claims/find.ts";
import { GERMAN } from "../../../src/check/claims/german/index.ts";
import { prepare } from "../../../src/check/claims/german/spell.ts";
import type { HoleFacts } from "../../../src/check/facts.ts";
import { growthOverFourfold } from "../../support/growth.ts";
import { corpusFacts } from "../corpus-holes.ts";
import type { HoleName } from "../corpus.ts";

const facts = corpusFacts();
const keysOf = (of: HoleFacts, markdown: string): string[] => findClaims(markdown, of, GERMAN).map(claimKey);
const keys = (hole: HoleName, markdown: string): string[] => keysOf(facts[hole], markdown);
const spelled = (text: string): string => text.split(" ").flatMap(GERMAN.spell).join(" ");

describe("words", () => {
  test.each([
    ["Grünbunkern", "grün- bunker"],
    ["Fairwaybunkers", "fairway- bunker"],
    ["Topfbunker", "bunker"],
    ["Teiches", "teich"],
    ["Gräben", "graben"],
    ["vom Grün", "von dem grün"],
    ["ums übers", "um das über das"],
    ["linker linkes linken", "linke linke linke"],
    ["links liegende", "links liegend"],
    ["größeres", "größeres"],
    ["Tees", "abschlag"],
    ["150 m", "150 metres"],
    ["geht's", "geht es"],
  ])("%s", (written, read) => {
    expect(spelled(written)).toBe(read);
  });
  test.each(["Gruenbunker", "GRÜNBUNKER", "Gru\u0308nbunker"])("however its umlaut is written: %s", (written) => {
    expect(spelled(written)).toBe("grün- bunker");
  });
  test("ß as ss", () => {
    expect(spelled("grosse")).toBe(spelled("große"));
  });
  test("a noun is told from another word by its capital", () => {
    expect(spelled("Weg")).toBe("weg");
    expect(spelled("Aus")).toBe("out");
    expect(spelled("aus")).toBe("aus");
  });
  test("a links is no side", () => {
    expect(keys("B", "Auf Tarvay Links gibt es keinen Bunker, der so tief ist.")).toEqual([]);
    expect(keys("B", "Links gibt es keinen Bunker.")).toEqual(["!bunker@left"]);
  });
  test("compounds that are not what they end in stay whole", () => {
    for (const word of ["Nachbarbunker", "Übungsbunker", "Unterwasser"]) expect(spelled(word)).not.toContain(" ");
  });
});

describe("stops", () => {
  test.each([
    ["ordinals", "Am 4. Loch ist rechts Aus."],
    ["ordinals without their noun", "Wie am 4. liegt es rechts."],
    ["abbreviations", "Nach ca. 200 Metern, d. h. früh."],
    ["decimals", "Es sind 9,5 Meter."],
    ["sayings", "„Hier ist links alles Wasser.“ Nein."],
  ])("%s leave the text as long as it was", (_, text) => {
    expect(prepare(text)).toHaveLength(text.length);
  });
  test("another hole's number does not end the sentence that is about it", () => {
    expect(keys("A", "Am 4. Loch ist links Aus.")).toEqual([]);
    expect(keys("A", "Par 4. Links ist Aus.")).toEqual(["par#4", "out-of-bounds@left"]);
  });
  test("what somebody says is not what the tip says; a name in quotation marks is", () => {
    expect(keys("A", "„Links ist überall nur Wasser“, ruft der Starter.")).toEqual([]);
    expect(keys("A", "Der „Mill Burn“ kreuzt das Fairway.")).toEqual(["water@across"]);
  });
});

describe("names", () => {
  const named = (name: string): HoleFacts => ({
    ...facts.A,
    things: facts.A.things.map((thing) => (thing.id === "bunker-short" ? { ...thing, name } : thing)),
  });
  test.each([
    ["Gorse Bunker", "Links vom Grün liegen die Gorse Bunker."],
    ["Alte Schanze", "Die Alte Schanze liegt links vom Grün."],
    ["Die Alte Schanze", "Links vom Grün wartet die Alte Schanze."],
    ["Der Trichter", "Der Trichter liegt links vom Grün."],
    ["The Kist", "Links vom Grün liegt The Kist."],
    ["Cooper's Bunker", "Links vom Grün liegt Cooper's Bunker."],
  ])("%s is met in %s", (name, markdown) => {
    const claims = findClaims(markdown, named(name), GERMAN);
    expect(claims.map(claimKey)).toEqual(["bunker@left"]);
    expect(claims[0]!.featureId).toBe("bunker-short");
  });
  test.each([
    ["Gorse Bunker", "Meiden Sie die Gorse Bunkers links."],
    ["Alte Schanze", "Vorsicht vor der Alten Schanze links."],
    ["Alter Pfuhl", "Achten Sie auf den Alten Pfuhl links."],
  ])("%s in another case: %s", (name, markdown) => {
    expect(findClaims(markdown, named(name), GERMAN).map(({ featureId }) => featureId)).toEqual(["bunker-short"]);
  });
});

describe("order of words", () => {
  test.each([
    ["the verb second", "Links vom Grün liegt ein Teich."],
    ["the verb last", "Keiner bestreitet, dass links vom Grün ein Teich liegt."],
    ["in a relative clause", "Der Teich, der links vom Grün liegt, ist tief."],
    ["as an adjective", "Der links vom Grün liegende Teich ist tief."],
    ["without a verb", "Links vom Grün ein Teich."],
  ])("%s", (_, text) => {
    expect(keys("A", text)).toEqual(["water@left"]);
  });
  test.each([
    "Das Grün fällt nach hinten ab.",
    "Das Grün fällt deutlich nach hinten ab.",
    "Weil das Grün nach hinten abfällt, rollt alles durch.",
    "Ein Grün, das nach hinten abfällt.",
    "Das Grün ist nach hinten geneigt.",
    "Das Grün steigt nach vorne an.",
  ])("a verb in two parts and its like: %s", (text) => {
    expect(keys("A", text)).toContain("green-slope@front-to-back");
  });
  test("what is not on the left is on the right", () => {
    expect(keys("D", "Das Meer liegt nicht links, sondern rechts.")).toEqual(["!water@left", "water@right"]);
  });
});

describe("claims nothing", () => {
  test.each([
    "Links bleiben.",
    "Zielen Sie links am Bunker vorbei.",
    "Spiel links am Teich vorbei.",
    "Man sollte den Bunker links nicht angreifen.",
    "Links gibt es keinen Bunker, der so tief ist.",
    "Auf der Bahn gibt es keinen Bunker, aus dem man nicht herauskommt.",
    "Kein Bunker links ist so tief wie dieser.",
    "Kein Bunker außer dem linken stört.",
    "Links vom Bunker liegt gutes Gras.",
    "Aus dem linken Bunker ist es weit.",
    "Wer links verzieht, findet links einen Teich.",
    "Wenn der Ball links liegt, ist links ein Teich im Weg.",
    "Liegt der Ball links, wartet links ein Teich.",
    "Links könnte ein Teich liegen.",
    "Früher lag links ein Teich.",
    "Liegt links ein Teich?",
    "Es wirkt, als läge links ein Teich.",
    "Angeblich liegt links ein Teich.",
    "Am nächsten Loch liegt links ein Teich.",
    "Bei Westwind geht es bergauf.",
    "Ein Putt von hinten geht bergab.",
    "Hinter dem Grün fällt das Gelände nach links ab.",
  ])("%s", (text) => {
    expect(keys("A", text)).toEqual([]);
  });
  test("but what is warned of counts, advice or not", () => {
    expect(keys("A", "Meiden Sie den Bunker links.")).toEqual(["bunker@left"]);
  });
});

test("a very long sentence is no runaway: work grows with less than the cube of its length", () => {
  const read = (times: number): unknown =>
    keys(
      "A",
      "Der Bunker links und der Bach und die Mauer und die Bäume rechts, das Grün fällt nach vorne und ".repeat(times),
    );
  expect(growthOverFourfold(read, 100)).toBeLessThan(40);
});
