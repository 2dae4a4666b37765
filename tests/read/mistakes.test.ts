/** Every mistake the format knows: that it is found, where it stands, and in what words it is told. */
import { describe, expect, test } from "vitest";
import { readContent } from "../../src/read/content.ts";
import { hole, linesOf, placesOf, plant, withClub, type Edit } from "../fixtures/marked.ts";

interface Mistake {
  readonly name: string;
  readonly edits: readonly Edit[];
}

const club = (from: string | RegExp, to: string): Edit => ({ file: "club.yaml", from, to });
const course = (from: string | RegExp, to: string): Edit => ({ file: "course-1/course.yaml", from, to });
const page = (number: number, from: string | RegExp, to: string): Edit => ({ file: hole(number), from, to });
const one = (name: string, ...edits: Edit[]): Mistake => ({ name, edits });

const inHole = (name: string, from: string | RegExp, to: string): Mistake => one(name, page(1, from, to));

/** A photo whose file is there no more than in the other cases: the mistake in its entry is one more. */
const inPhoto = (name: string, field: string): Mistake =>
  inHole(name, "card:", `photos:\n  - { file: ¶tee.jpg, alt: A, ${field} }\ncard:`);

const LINE = /("golf":"hole"\}, geometry: \{ type: LineString, coordinates: )\[.*\]\] \}/;
const GREEN = /("golf":"green"\}, geometry: \{ type: )Polygon, coordinates: \[\[.*\]\]\]/;
const FIRST_TEE = /(tee: ?"?white"?|"tee":"white")(\}, geometry: \{ type: Point, coordinates: )\[([^,]*),([^\]]*)\]/;

const groups: Readonly<Record<string, readonly Mistake[]>> = {
  "club.yaml": [
    one("unknown field", club("units:", "¶unit:")),
    one("unknown field of a group", club("units: yards", "units: yards\ncontact:\n  ¶mail: office@example.org")),
    one(
      "missing name",
      club("name: Sample Links Golf Club", "¶place: Somewhere"),
      club("place: Isle of Sample\n", ""),
    ),
    one("a number for a name", club("name: Sample Links Golf Club", "name: ¶18")),
    one("empty value", club("name: Sample Links Golf Club", "¶name:")),
    one("units that are not", club("units: yards", "units: ¶feet")),
    one("language that is not", club("language: en", "language: ¶english please")),
    one(
      "e-mail, telephone and website that are not",
      club("units: yards", "units: yards\ncontact: { email: ¶nobody, telephone: ¶5, website: ¶example.org }"),
    ),
    one("a sentence for a list of sentences", club("units: yards", "units: yards\ncautions: ¶Mind the cliff.")),
    one("a list where a sentence must stand", club("units: yards", "units: yards\nlocalRules: [ good, ¶[ bad ] ]")),
  ],
  "course.yaml": [
    one("unknown field", course("sources:", "¶source:")),
    one("colour that is no #rrggbb", course('"#b3261e"', "¶red")),
    one("colour without quotes is a comment to YAML", course('colour: "#b3261e"', "¶colour: #b3261e")),
    one("default tee that is no tee set", course("defaultTee: white", "defaultTee: ¶wite")),
    one("no tees at all", course(/tees:[^]*$/, "tees: ¶[]\n")),
    one("two tee sets with one id", course("id: red", "id: ¶white")),
    one("tee id with capitals", course("id: red", "id: ¶Red")),
    one(
      "slope, course rating and par out of range",
      course("courseRating: 70.1, slopeRating: 124, par: 33", "courseRating: ¶170.1, slopeRating: ¶156, par: ¶7.2"),
    ),
    one(
      "rated twice for men",
      course(
        "- { gender: men,",
        "- { gender: men, courseRating: 70, slopeRating: 120, par: 33 }\n      - { gender: ¶men,",
      ),
    ),
    one("a survey on a day that never was", course("2026-05-14", "¶2026-02-30")),
    one("corridor of nothing", course("defaultTee:", "corridorMetres: ¶0\ndefaultTee:")),
    one("HTML in the description", course("description: A", "description: ¶A <script>x</script>")),
    one(
      "height file that is not there",
      course("defaultTee:", "ground: { heights: ¶ground/height.tif }\ndefaultTee:"),
    ),
    one("height file outside the course", course("defaultTee:", "ground: { heights: ¶../height.tif }\ndefaultTee:")),
    one(
      "shared line of play and tee marker",
      course(
        "defaultTee:",
        `features:
  type: FeatureCollection
  features:
    - { type: Feature, id: line-7, properties: { golf: ¶hole }, geometry: { type: LineString, coordinates: [[-9, 56.5], [-9, 56.501]] } }
    - { type: Feature, id: tee, properties: { golf: ¶tee, tee: white }, geometry: { type: Point, coordinates: [-9, 56.5] } }
defaultTee:`,
      ),
    ),
  ],
  "front matter": [
    inHole("a figure typed into the aim", "card:", "aim: ¶200 yards at the tree\ncard:"),
    inHole("unknown field", "par:", "¶pra:"),
    inHole("a word for a number", "par: 4", "par: ¶four"),
    inHole("a number in quotes is not coerced", "par: 4", 'par: ¶"4"'),
    inHole("par out of range", "par: 4", "par: ¶7"),
    inHole("par for men only", "par: 4", "par: ¶{ men: 4 }"),
    inHole("par for each, one wrong", "par: 4", "par: { men: 4, women: ¶four }"),
    inHole("a list for a par", "par: 4", "par: ¶[4, 5]"),
    inHole("empty field", "name: Hole 1", "¶name:"),
    inHole("several at once", /name: Hole 1\npar: 4/, "name: ¶1\npar: ¶four\n¶colour: red"),
    inHole("card with a word and a fraction", "card: { white: 361, red: 328 }", "card: { white: ¶long, red: ¶328.5 }"),
    one("card without the red tees", page(1, ", red: 328", ""), page(1, '"tee":"red"', '"tee":¶"red"')),
    one(
      "card with tees the hole has no marker for",
      page(1, /\n.*id: tee-red.*/, ""),
      page(1, "red: 328", "¶red: 328"),
    ),
    one("tee sets that do not exist", page(1, "red: 328", "¶rde: 328"), page(1, '"tee":"red"', '"tee":¶"rde"')),
    one("hole number that is not the file's", page(1, "hole: 1", "hole: ¶10")),
    one("hole number beyond 18", page(1, "hole: 1", "hole: ¶19")),
    inHole("a photo without its alternative text", "card:", "photos:\n  - ¶{ file: ¶07-tee.jpg }\ncard:"),
  ],
  features: [
    one("no features", page(1, /^---\nhole/, "---\n¶hole"), page(1, /features:[^]*---/, "---")),
    inHole(
      "a list where the collection must stand",
      /features:\n {2}type: FeatureCollection\n {2}features:[^]*---/,
      "¶features:\n  - { type: Feature }\n---",
    ),
    inHole("collection without its type", "  type: FeatureCollection\n  features", "  type: ¶Features\n  features"),
    inHole("unknown field of a feature", "type: Feature, id: green", "type: Feature, ¶name: Green, id: green"),
    inHole(
      "two lines of play",
      "id: tee-white, properties: {",
      "id: tee-white, properties: { golf: ¶hole }, geometry: { type: LineString, coordinates: [[-9, 56.5], [-9, 56.501]] } }\n    - { type: Feature, id: tee-white-2, properties: {",
    ),
    one("no green", page(1, /\n.*id: green,.*/, ""), page(1, "\nfeatures:", "\n¶features:")),
    inHole("id written twice", "id: pond", "id: ¶green"),
    inHole("id with a space", "id: pond", "id: ¶Kelp Gully"),
    inHole("id that is a number", "id: pond", "id: ¶7"),
    one("no id", page(1, "{ type: Feature, id: pond", "¶{ type: Feature")),
    inHole("golf value that is no feature", '"golf":"bunker"', '"golf":¶"bunkr"'),
    inHole(
      "golf value on the wrong geometry",
      '"golf":"green"}, geometry: { type: Polygon, coordinates: [',
      '"golf":¶"green"}, geometry: { type: MultiLineString, coordinates: [',
    ),
    inHole("misspelt key", '{"golf":"bunker","name":"Left bunker"}', "{¶gofl: bunker, name: Left bunker}"),
    inHole(
      "no tag that says what it is",
      'properties: {"golf":"bunker","name":"Left bunker"}',
      "¶properties: { name: Left bunker }",
    ),
    one(
      "no properties",
      page(
        1,
        '{ type: Feature, id: bunker-left, properties: {"golf":"bunker","name":"Left bunker"},',
        "¶{ type: Feature, id: bunker-left,",
      ),
    ),
    inHole("width with its unit", '"golf":"bunker"', '"golf":"bunker", width: ¶3 m'),
    inHole("nested tag", '"golf":"bunker"', '"golf":"bunker", source: ¶{ by: hand }'),
    one(
      "marker without its tee set",
      page(1, 'properties: {"golf":"tee","tee":"red"}', "properties: ¶{ golf: tee }"),
      page(1, "red: 328", "¶red: 328"),
    ),
    one(
      "second marker of one tee set",
      page(
        1,
        "    - { type: Feature, id: green",
        "    - { type: Feature, id: tee-red-2, properties: { golf: tee, tee: ¶red }, geometry: { type: Point, coordinates: [-9, 56.5004] } }\n    - { type: Feature, id: green",
      ),
    ),
    one(
      "id of a shared feature",
      course(
        "defaultTee:",
        `features: { type: FeatureCollection, features: [ { type: Feature, id: meer, properties: { natural: water }, geometry: { type: LineString, coordinates: [[-9, 56.5], [-9, 56.501]] } } ] }\ndefaultTee:`,
      ),
      page(1, "id: pond", "id: ¶meer"),
      page(1, "carry[pond]", "carry[meer]"),
    ),
  ],
  geometry: [
    inHole("type that is none", "type: LineString", "type: ¶Linestring"),
    inHole("geometry collection", "type: LineString", "type: ¶GeometryCollection"),
    one(
      "coordinates misspelt",
      page(1, "geometry: { type: LineString, coordinates:", "geometry: ¶{ type: LineString, ¶coordinate:"),
    ),
    inHole("null geometry", /geometry: \{ type: LineString.*/, "geometry: ¶null }"),
    inHole("position of one number", LINE, "$1[[-9, 56.5], ¶[-9]] }"),
    inHole("position of four numbers", LINE, "$1[[-9, 56.5], ¶[-9, 56.501, 3, 4]] }"),
    inHole("position with a word", LINE, "$1[[-9, 56.5], ¶[west, 56.501]] }"),
    inHole("NaN and infinity", LINE, "$1[¶[-9, .nan], ¶[.inf, 56.501], [-9, 56.502]] }"),
    inHole("a number JSON reads as infinite", LINE, "$1[[-9, 56.5], ¶[-9, 1e999]] }"),
    inHole("latitude and longitude out of range", LINE, "$1[¶[-9, 256.5], ¶[-190, 56.501]] }"),
    inHole("height of a mountain", LINE, "$1[[-9, 56.5, 3], ¶[-9, 56.501, 12000]] }"),
    inHole("positions not in a list", LINE, "$1¶[-9, 56.5] }"),
    inHole("no positions", LINE, "$1¶[] }"),
    inHole("line of one position", LINE, "$1¶[[-9, 56.5]] }"),
    inHole("line of no length", LINE, "$1¶[[-9, 56.5], [-9, 56.5]] }"),
    inHole(
      "ring that is not closed",
      GREEN,
      "$1Polygon, coordinates: [[[-9, 56.503], [-8.9998, 56.503], [-8.9998, 56.5031], ¶[-9, 56.5031]]]",
    ),
    inHole(
      "ring of three positions",
      GREEN,
      "$1Polygon, coordinates: [¶[[-9, 56.503], [-8.9998, 56.503], [-9, 56.503]]]",
    ),
    inHole(
      "ring without area",
      GREEN,
      "$1Polygon, coordinates: [¶[[-9, 56.503], [-8.9998, 56.503], [-9, 56.503], [-8.9998, 56.503], [-9, 56.503]]]",
    ),
    inHole(
      "bow tie",
      GREEN,
      "$1Polygon, coordinates: [[¶[-9, 56.503], [-8.9998, 56.5032], [-8.9998, 56.503], [-9, 56.5032], [-9, 56.503]]]",
    ),
    inHole(
      "spike that runs back along itself",
      GREEN,
      "$1Polygon, coordinates: [[¶[-9, 56.503], [-8.9998, 56.503], [-8.9996, 56.503], [-8.9998, 56.503], [-8.9998, 56.5032], [-9, 56.503]]]",
    ),
    inHole(
      "outline that touches itself in a vertex",
      GREEN,
      "$1Polygon, coordinates: [[¶[-9, 56.503], [-8.9998, 56.5032], [-8.9996, 56.503], [-8.9996, 56.5034], [-8.9998, 56.5032], [-9, 56.5034], [-9, 56.503]]]",
    ),
    one(
      "hole in an area that crosses its outline",
      page(
        1,
        GREEN,
        "$1Polygon, coordinates: [[[-9, 56.503], ¶¶[-8.9996, 56.503], [-8.9996, 56.5034], [-9, 56.5034], [-9, 56.503]], [[-8.9998, 56.5031], [-8.9994, 56.5032], [-8.9998, 56.5033], [-8.9998, 56.5031]]]",
      ),
    ),
    inHole(
      "hole beside its outline",
      GREEN,
      "$1Polygon, coordinates: [[[-9, 56.503], [-8.9998, 56.503], [-8.9998, 56.5032], [-9, 56.503]], ¶[[-8.999, 56.503], [-8.9988, 56.503], [-8.9988, 56.5032], [-8.999, 56.503]]]",
    ),
    inHole(
      "second polygon of several",
      /("golf":"bunker",[^}]*\}, geometry: \{ type: )Polygon, coordinates: .*\]\]\]/,
      "$1MultiPolygon, coordinates: [[[[-9, 56.503], [-8.9998, 56.503], [-8.9998, 56.5032], [-9, 56.503]]], [[[-9, 56.504], [-8.9998, 56.504], [-8.9998, 56.5042], ¶[-9, 56.5042]]]]",
    ),
    inHole("latitude beyond 90 is a swap", LINE, "$1[¶[-9, 156.5, 3], [-9, 56.501]] }"),
    inHole(
      "a whole outline latitude first",
      GREEN,
      "$1Polygon, coordinates: [[¶[56.503, -9], [56.503, -8.9998], [56.5032, -8.9998], [56.503, -9]]]",
    ),
    inHole("many of a kind are counted", LINE, `$1[${Array(10).fill("¶[-9]").join(", ")}, [-9], [-9], [-9]] }`),
    inHole(
      "old coordinate reference",
      "geometry: { type: LineString,",
      "geometry: { type: LineString, ¶crs: { type: name },",
    ),
    inHole("latitude first, far from the course", FIRST_TEE, "$1$2¶[$4, $3]"),
    inHole("far away", FIRST_TEE, "$1$2¶[-9.5, 56.5]"),
    one(
      "latitude first in a block list",
      page(1, FIRST_TEE, "$1}, geometry: { type: Point, coordinates: ¶[56.5, -9.0 ] # pin\n     "),
    ),
  ],
  "the round": [
    one("one stroke index for two holes", page(2, "strokeIndex: 2", "strokeIndex: ¶1")),
    one("one stroke index for two holes, women only", page(2, "strokeIndex: 2", "strokeIndex: { men: 2, women: ¶1 }")),
    one("stroke index beyond the holes", page(2, "strokeIndex: 2", "strokeIndex: ¶12")),
    one("stroke index beyond 18", page(2, "strokeIndex: 2", "strokeIndex: ¶19")),
    one("number of another hole than the file's", page(3, "hole: 3", "hole: ¶2")),
  ],
  photos: [
    inHole("not there", "card:", "photos:\n  - { file: ¶07-tee.jpg, alt: From the tee }\ncard:"),
    inHole(
      "outside the folder",
      "card:",
      "photos:\n  - { file: ¶../../secret.jpg, alt: A }\n  - { file: ¶/etc/passwd.jpg, alt: A }\n  - { file: ¶'a\\b.jpg', alt: A }\ncard:",
    ),
    inHole("no picture", "card:", "photos:\n  - { file: ¶notes.txt, alt: A }\ncard:"),
    inHole("as some phones keep them", "card:", "photos:\n  - { file: ¶IMG_0412.HEIC, alt: A }\ncard:"),
    inPhoto("focus outside the picture", "focus: [0.3, ¶1.6]"),
    inPhoto("focus of one number", "focus: ¶0.3"),
    inPhoto("focus in percent", "focus: [¶30%, ¶60%]"),
    inPhoto("taken at a latitude beyond the pole", "at: [-9, ¶96.5]"),
    inPhoto("taken at latitude and longitude swapped", "at: ¶[56.5, -9]"),
    inPhoto("taken far from the course", "at: ¶[-3.2, 56.5]"),
    inPhoto("taken from a tee set instead of a feature", "from: ¶white"),
    inPhoto("taken from a feature that is not there, towards another", "from: ¶pnod, towards: ¶gren"),
    inPhoto("taken at two places", "at: [-9, 56.5], ¶from: tee"),
    inPhoto("looking from nowhere", "¶towards: green"),
    inPhoto("unknown field", "¶form: tee"),
  ],
  notices: [
    inHole("not a list", "card:", "notices: ¶Winter tees\ncard:"),
    inHole("without an end", "card:", 'notices:\n  - ¶{ from: 2026-11-01, text: "Winter tees" }\ncard:'),
    inHole(
      "days that never were",
      "card:",
      'notices:\n  - { from: ¶2026-11-31, until: ¶1 March, text: "Winter tees" }\ncard:',
    ),
    inHole(
      "over before it begins",
      "card:",
      'notices:\n  - { from: 2026-11-01, until: ¶2026-02-28, text: "Winter tees" }\ncard:',
    ),
    inHole(
      "holes on a hole's own page",
      "card:",
      'notices:\n  - { until: 2027-02-28, ¶holes: [ 1 ], text: "Winter tees" }\ncard:',
    ),
    one(
      "holes that are not there",
      course(
        "defaultTee:",
        'notices:\n  - { until: 2027-02-28, holes: [ 9, ¶10 ], text: "Winter tees" }\ndefaultTee:',
      ),
    ),
    one(
      "a word for holes",
      course("defaultTee:", 'notices:\n  - { until: 2027-02-28, holes: ¶all, text: "Winter tees" }\ndefaultTee:'),
    ),
    one(
      "holes of no number",
      course("defaultTee:", 'notices:\n  - { until: 2027-02-28, holes: [ ¶0, ¶seven ], text: ¶"" }\ndefaultTee:'),
    ),
  ],
  "photo from the air": [
    one("not there", course("defaultTee:", "ground: { photo: ¶ground/air.tif }\ndefaultTee:")),
    one(
      "not there, with corners",
      course(
        "defaultTee:",
        "ground: { photo: { file: ¶ground/air.jpg, corners: [[-9.01, 56.51], [-8.99, 56.51], [-8.99, 56.50], [-9.01, 56.50]] } }\ndefaultTee:",
      ),
    ),
    one(
      "three corners",
      course(
        "defaultTee:",
        "ground: { photo: { file: air.jpg, corners: ¶[[-9.01, 56.51], [-8.99, 56.51], [-8.99, 56.50]] } }\ndefaultTee:",
      ),
    ),
    one(
      "corners the other way round",
      course(
        "defaultTee:",
        "ground: { photo: { file: air.jpg, corners: ¶[[-9.01, 56.51], [-9.01, 56.50], [-8.99, 56.50], [-8.99, 56.51]] } }\ndefaultTee:",
      ),
    ),
    one(
      "a corner beyond the pole",
      course(
        "defaultTee:",
        "ground: { photo: { file: air.jpg, corners: [[-9.01, ¶156.51], [-8.99, 56.51], [-8.99, 56.50], [-9.01, 56.50]] } }\ndefaultTee:",
      ),
    ),
    one("ground without anything", course("defaultTee:", 'ground: ¶{ crs: "EPSG:32629" }\ndefaultTee:')),
    one("a list of pictures", course("defaultTee:", "ground: { photo: ¶[ a.tif, b.tif ] }\ndefaultTee:")),
  ],
  "the tip": [
    inHole("script", "It is :carry", "It is ¶<script>alert(1)</script> :carry"),
    inHole("script on a line of its own", "It is :carry", "¶<script>\nalert(1)\n</script>\n\nIt is :carry"),
    inHole("tags", "It is :carry", "It is ¶<b>bold</b> and ¶<i>not</i> :carry"),
    inHole("comment", "It is :carry", "It is ¶<!-- hidden --> :carry"),
    inHole(
      "javascript link",
      "It is :carry",
      "See [good](https://example.org) and [bad](¶javascript:alert(1)). It is :carry",
    ),
    inHole("data link", "It is :carry", "See [bad](¶data:text/html,hello). It is :carry"),
    inHole("link without its scheme", "It is :carry", "See [bad](¶//example.org/x). It is :carry"),
    inHole("link in a definition below", "It is :carry", "See [bad][1].\n\n[1]: ¶ftp://example.org/x\n\nIt is :carry"),
    inHole("a control character", "It is :carry", "It ¶\u0085is :carry"),
    inHole("figures shown the other way round", "It is :carry", "It is ¶\u202e361 :carry"),
    inHole("picture", "It is :carry", "¶![A view](view.jpg) It is :carry"),
  ],
  yaml: [
    inHole("quote that is not closed", "name: Hole 1", 'name: "Hole 1¶'),
    inHole("bracket that is not closed", "name: Hole 1\n", "name: [\n¶"),
    inHole("doubled field", "name: Hole 1", "name: Hole 1\n¶name: Again"),
    inHole("tab for indentation", "  type: FeatureCollection", "¶\ttype: FeatureCollection"),
    inHole("colon in a text", "name: Hole 1", "name: ¶Hole: 1"),
    inHole("alias to nothing", "name: Hole 1", "name: ¶*one"),
    inHole("merge key", "name: Hole 1", "¶<<: { name: Hole 1 }\nname: Hole 1"),
    inHole("unknown tag", "name: Hole 1", "name: ¶!!js/function 'x'"),
    one("a second document, by ---", club("units: yards", "units: yards\n¶---\ncautions: [ Mind the cliff. ]")),
    one("a second document, by ...", course("defaultTee:", "¶...\ndefaultTee:")),
    one("a document that ends before it begins", club(/^/, "# The club\n¶...\n")),
    one(
      "a second document with a comment on its line",
      club(/^/, "---\n"),
      club("units: yards", "units: yards\n¶--- # more\n# and\nlocalRules: [ One. ]"),
    ),
    inHole("the end of a document in the front matter", "card:", "¶...\ncard:"),
    inHole(
      "a line --- too many in the front matter",
      /\n---\n/,
      "\n---\n¶notices:\n  - { until: 2027-02-28, text: Ice. }\n---\n",
    ),
    inHole("a control character by an escape", "name: Hole 1", 'name: ¶"Hole\\u0007 1"'),
    inHole("half a pair by an escape", "name: Hole 1", 'name: ¶"Hole \\uD83D 1"'),
    inHole(
      "a direction override by an escape, in a name of a field",
      "name: Hole 1",
      'name: Hole 1\n¶"\\u202eaim": Left',
    ),
    inHole("list for the whole front matter", /---\nhole[^]*\n---/, "---\n¶- 7\n- Skerry\n---"),
  ],
};

describe.each(Object.entries(groups))("%s", (_, mistakes) => {
  test.each(mistakes)("$name", async ({ edits }) => {
    await withClub(async (folder) => {
      const expected = await plant(folder, edits);
      const { club: read, diagnostics } = await readContent(folder);
      expect(placesOf(diagnostics)).toEqual(expected);
      expect(linesOf(diagnostics)).toMatchSnapshot();
      expect(read).toBeUndefined();
    });
  });
});
