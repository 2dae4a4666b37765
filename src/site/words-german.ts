/**
 * The guide's own words in German, with the terms of the German editions of the Rules of
 * Golf and of the Handicap rules: Abschlag, Grün, Penalty Area, Aus, Spielleitung, Zähler.
 *
 * "Loch" is the hole in the round, with its number; "Bahn" is the ground it is played on.
 * Where the hole is cut is told of the flag ("Fahne"), so that "Loch" keeps one meaning.
 * A stroke index is "Vorgabenverteilung" in full and "HCP" in short, as it heads the column
 * on German scorecards; a player's Playing Handicap is "PH", never "HCP".
 * "Beginn", "Carry" and "Rest" stand for reach, carry and leaves throughout; the front and
 * the back of a green are its "Anfang" and "Ende". "Hindernisse" is everyday language for
 * what is in the way, the Rules' terms are used for bunkers and penalty areas.
 * Names of tees, features and holes come from the club in any gender and number, so they
 * stand uninflected: behind a colon, in brackets, or after "Abschlag".
 */
import { germanGroundDrawing, germanPlate } from "./words-draw-german.ts";
import { germanFilm } from "./words-film-german.ts";
import { germanGround, germanGroundDefinitions } from "./words-ground-german.ts";
import { germanKeep } from "./words-keep-german.ts";
import { germanMap } from "./words-map-german.ts";
import { germanPaper } from "./words-paper-german.ts";
import { germanFigures, germanKinds, germanSides } from "./words-tell-german.ts";
import type { Words } from "./words-shape.ts";

export const german: Words = {
  language: "de",
  locale: "de-DE",
  // Nouns keep their capital wherever they stand.
  inSentence: (word) => word,
  list: (items) => (items.length < 2 ? items.join("") : `${items.slice(0, -1).join(", ")} und ${items[items.length - 1]}`),

  tell: germanFigures,
  draw: germanPlate,
  ground: germanGround,
  drawGround: germanGroundDrawing,
  paper: germanPaper,
  keep: germanKeep,
  film: germanFilm,
  liveMap: germanMap,

  skip: "Zum Inhalt springen",
  guide: "Platzführer",
  guideTo: (course) => `Platzführer: ${course}`,
  hole: "Loch",
  holeNumber: (hole) => `Loch ${hole}`,
  holeTitle: (hole, name) => `Loch ${hole}, ${name}`,
  par: "Par",
  parIs: (par) => `Par ${par}`,
  strokeIndex: "Vorgabenverteilung",
  strokeIndexShort: "HCP",
  genders: { men: "Herren", women: "Damen" },
  sides: { ...germanSides, across: "quer", beyond: "hinter dem Grün" },
  kinds: germanKinds,
  unnamedHazard: "Hindernis",
  landmarks: { lighthouse: "Leuchtturm", cairn: "Steinhaufen", beacon: "Bake", mast: "Mast", tower: "Turm" },
  stretch: (name, number) => `${name}, ${["zum ersten", "zum zweiten", "zum dritten"][number - 1] ?? `zum ${number}.`} Mal`,

  nav: {
    main: "Platzführer",
    languages: "Sprachen",
    holes: "Löcher",
    previousHole: "Voriges Loch",
    nextHole: "Nächstes Loch",
    chooseHole: "Loch wählen",
    close: "Schließen",
    cover: "Platz",
    card: "Scorekarte",
    map: "Plan",
    figures: "So wird gemessen",
    courses: "Alle Plätze",
    frontNine: "Erste Neun",
    backNine: "Zweite Neun",
  },

  settings: {
    title: "Abschlag und Einheit",
    open: (tee, unit) => `Abschlag und Einheit: ${tee}, ${unit}. Ändern`,
    tee: "Mein Abschlag",
    units: "Entfernungen in",
    yards: "Yards",
    metres: "Meter",
    inUnit: { yards: "Yards", metres: "Metern" },
    third: "Fahnenposition",
    thirds: { front: "Vorderes Drittel", middle: "Mittleres Drittel", back: "Hinteres Drittel" },
    kept: "Nur auf diesem Gerät gespeichert.",
    changed: "Angaben vom Abschlag {tee}. Einheit: {units}.",
    changedThird: "Angaben vom Abschlag {tee}. Einheit: {units}. Fahnenposition: {third}.",
  },

  holePage: {
    plate: "Die Bahn",
    plateCaption: "Gespielt wird nach oben.",
    atAGlance: "Auf einen Blick",
    fromTee: (tee) => `Vom Abschlag ${tee}`,
    length: "Länge",
    card: "Scorekarte",
    carry: "Carry",
    carryOver: (name) => `Carry: ${name}`,
    reach: "Beginn",
    leaves: "Rest",
    inPlay: "Im Spiel",
    toDryLand: "aufs Trockene am Grün",
    laterHazards: "Nach dem Abschlag im Spiel",
    laterNote: "Von dort, wo die Referenzspieler des World Handicap System stehen, wenn es in Reichweite kommt, auf der Spiellinie.",
    laterAfter: "nach",
    noCarry: "Kein Carry nötig",
    noCarryOffTee: "Vom Abschlag kein Carry nötig",
    laterAcross: "Später quer",
    layUpShort: "Vorlegen, kürzer als",
    carryToGreen: "Carry aufs Trockene am Grün",
    aim: "Ziel",
    aimOnLine: "auf der Linie",
    aimLeft: "links der Linie",
    aimRight: "rechts der Linie",
    green: "Grün",
    front: "Anfang",
    middle: "Mitte",
    back: "Ende",
    depth: "Tiefe",
    width: "Breite",
    rise: "Abschlag bis Grün",
    up: (height) => `${height} bergauf`,
    down: (height) => `${height} bergab`,
    level: "eben",
    howFar: "Entfernungen",
    hazards: "Hindernisse",
    hazard: "Was",
    hazardsAllTees: "Hindernisse von jedem Abschlag",
    hazardsNote: "„Beginn“ reicht bis zur nächsten Kante, „Carry“ sicher darüber hinweg; „Rest“ bleibt dann noch bis zur Mitte des Grüns.",
    reachToCarry: "Beginn–Carry",
    wide: "weit außen",
    allTees: "Alle Abschläge",
    tee: "Abschlag",
    howToPlay: "So spielen Sie die Bahn",
    notTranslated: "Dieser Tipp ist noch nicht übersetzt.",
    pictures: "Bilder",
    photoCredit: (credit) => `Foto: ${credit}`,
    openMap: "Live-Karte öffnen",
    bend: (side, angleDegrees) => `Knick ${Math.round(angleDegrees)}° ${germanSides[side]}`,
    cautionLine: "Spielen Sie erst, wenn die Bahn frei ist, und rufen Sie sofort „Fore“, wenn ein Ball jemanden treffen könnte.",
    cautionLink: "Sicherheitshinweise",
    turnLeft: "dann",
    definitions: "Was diese Angaben genau bedeuten",
  },

  notices: {
    title: "Aktuell",
    until: (date) => `Bis zum ${date}.`,
    between: (from, until) => `Vom ${from} bis zum ${until}.`,
    on: (date) => `Am ${date}.`,
  },

  photos: {
    marked: (letter) => `Standort ${letter} auf dem Plan.`,
  },

  cover: {
    holes: "Die Löcher",
    theMap: "Der Platz",
    about: "Über den Platz",
    totals: "Längen",
    localRules: "Platzregeln",
    contact: "Der Club",
    email: "E-Mail",
    telephone: "Telefon",
    website: "Website",
    address: "Adresse",
    start: "Los an Loch 1",
    continueAt: (hole) => `Weiter an Loch ${hole}`,
    holesCount: (count) => (count === 1 ? "1 Loch" : `${count} Löcher`),
    lengths: "Par und Länge je Abschlag",
    out: "Out",
    in: "In",
    total: "Gesamt",
  },

  card: {
    title: "Scorekarte",
    intro: (unit) => `Gemessene Längen in ${unit}, von jeder Abschlagmarkierung entlang der Spiellinie bis zur Mitte des Grüns.`,
    hole: "Loch",
    name: "Name",
    par: "Par",
    strokeIndex: "Vorgabenverteilung",
    out: "Out",
    in: "In",
    total: "Gesamt",
    ratings: "Rating",
    ratingsNote: "Course Rating, Bogey Rating und Slope Rating sind Angaben des Clubs nach dem World Handicap System.",
    courseRating: "Course Rating",
    bogeyRating: "Bogey Rating",
    slopeRating: "Slope Rating",
    notOnCard: "an diesem Loch nicht benutzt",
    measuredNote: "Weicht die gedruckte Scorekarte des Clubs ab, gilt diese.",
    score: "Score",
  },

  map: {
    title: "Platzplan",
    intro: "Wählen Sie ein Loch auf dem Plan oder in der Liste.",
    holes: "Löcher auf dem Plan",
    alternative: (course, holes) => `Platzplan ${course}: alle ${holes} Löcher, Norden ist oben. Die Liste danach nennt jedes Loch und seine Länge.`,
  },

  figures: {
    title: "So wird gemessen",
    intro: "Jede Angabe in diesem Platzführer wird beim Erstellen aus vermessenen Positionen berechnet. Keine ist von Hand eingetragen; Plan und Zahlen können einander also nicht widersprechen.",
    definitions: "Was jede Angabe bedeutet",
    uncertainty: "Wie genau die Angaben sind",
    uncertaintyText: [
      "Gerechnet wird auf den Millimeter genau. Die Grenze setzt die Vermessung: wie genau jede Position aufgenommen wurde und was sich seither am Boden verändert hat.",
      "Abschlagmarkierungen werden täglich versetzt; gemessen ist von den festen Messpunkten aus. Auch das Loch wird versetzt: Anfang, Mitte und Ende sagen, wo das Grün liegt, nicht, wo heute die Fahne steht.",
      "Sand, Ginster und Ufer wandern mit den Jahreszeiten. Rechnen Sie bei jedem Carry mit ein paar Metern mehr oder weniger.",
      "Entfernungen gelten für ebenen Boden und Windstille; „Spielt wie“ berücksichtigt Höhenunterschied und Luft, „Heute“ den Wind, den Sie angeben. Regen, Boden und Spieler sind nirgends eingerechnet.",
    ],
    survey: "Vermessung",
    surveyed: (date) => `Vermessen am ${date}.`,
    notSurveyed: "Der Club nennt kein Datum der Vermessung.",
    corridor: (width) => `Hindernisse gelten als im Spiel, wenn sie bis zu ${width} links oder rechts der Spiellinie liegen.`,
    sources: "Quellen",
    noSources: "Der Club nennt keine Quellen.",
    list: [
      {
        id: "length",
        term: "Länge",
        meaning: "Waagerechte Entfernung von der Abschlagmarkierung entlang der Spiellinie über ihre Knicke bis zur Mitte des Grüns. Ein Par 3 ist eine gerade Linie.",
        formula: "Länge = Summe der Teilstrecken der Spiellinie",
      },
      {
        id: "reach",
        term: "Beginn",
        meaning: "Gerade Entfernung von der Abschlagmarkierung bis zur nächsten Kante eines Hindernisses im Schlagkorridor. Ein kürzerer Schlag bleibt davor.",
        formula: "Beginn = kleinste Entfernung zu dem Teil des Hindernisses, der im Korridor liegt",
      },
      {
        id: "carry",
        term: "Carry",
        meaning: "Gerade Entfernung von der Abschlagmarkierung bis sicher hinter ein Hindernis. Kreuzt das Hindernis die Spiellinie, zählt sein fernster Schnitt mit dem Korridor; liegt es daneben, sein hinteres Ende.",
        formula: undefined,
      },
      {
        id: "leaves",
        term: "Rest",
        meaning: "Was vom hinteren Ende eines Hindernisses bis zur Mitte des Grüns bleibt.",
        formula: undefined,
      },
      {
        id: "green",
        term: "Anfang, Mitte, Ende",
        meaning: "Entfernungen von der Abschlagmarkierung entlang der Spiellinie bis zur vorderen Kante des Grüns, zu seiner Mitte und zu seiner hinteren Kante in Anspielrichtung. Knickt die Spiellinie, wird um den Knick herum gemessen.",
        formula: undefined,
      },
      {
        id: "depth",
        term: "Tiefe und Breite",
        meaning: "Das Grün von Kante zu Kante, in Anspielrichtung und quer dazu, beides durch die Mitte.",
        formula: "Tiefe = Ende − Anfang",
      },
      {
        id: "rise",
        term: "Abschlag bis Grün",
        meaning: "Höhe der Grünmitte über oder unter der Abschlagmarkierung. Nur angegeben, wo die Vermessung Höhen enthält.",
        formula: "Höhenunterschied = Höhe des Grüns − Höhe des Abschlags",
      },
      {
        id: "bend",
        term: "Knick",
        meaning: "Entfernung von der Abschlagmarkierung entlang der Spiellinie bis zu dem Punkt, an dem sie abknickt, und der Winkel, um den sie dort abknickt.",
        formula: undefined,
      },
      ...germanGroundDefinitions,
      {
        id: "plane",
        term: "Wie Entfernungen berechnet werden",
        meaning: "Positionen auf dem WGS-84-Ellipsoid werden für jeden Platz in eine Ebene abgebildet: mit einer transversalen Mercator-Projektion um den Meridian des Platzes, auf dem der Maßstab 1 ist. Bis neun Kilometer von ihm entfernt ist ein Kilometer in der Ebene auf einen Millimeter genau ein Kilometer auf dem Ellipsoid.",
        formula: "1 Yard = 0,9144\u00a0m, genau",
      },
    ],
    formula: "Kurz gefasst",
    privacy: "Was dieser Platzführer speichert",
    privacyText: "Abschlag, Einheit, Wind, Carry und Ihre anderen Einstellungen bleiben auf Ihrem Gerät und werden nirgendwohin gesendet. Der Platzführer lädt nichts von Dritten.",
    rules: "Während der Runde",
    rulesText: "Regel 4.3a der Golfregeln erlaubt Entfernung und Richtung und Notizen von vor der Runde; sie erlaubt nicht, auf dem Platz Höhenunterschiede oder den Wind zu messen. So lesen wir die Regel: Es gilt, was die Spielleitung entscheidet.",
  },

  cautions: {
    title: "Sicherheitshinweise",
    lead: "Platzregeln, Personal und Schilder des Clubs gehen allem in diesem Platzführer vor.",
    general: [
      { title: "Gewitter", text: "Unterbrechen Sie das Spiel sofort und gehen Sie in ein Gebäude oder ein Auto; meiden Sie Anhöhen, Masten, einzelne Bäume und Wasser. Bleiben Sie dort, bis das Personal den Platz wieder freigibt." },
      { title: "Verzogene Bälle", text: "Spielen Sie erst, wenn niemand im Weg ist. Rufen Sie laut „Fore“, wenn ein Ball in die Nähe von Menschen fliegen kann, und schützen Sie den Kopf, wenn Sie den Ruf hören." },
      { title: "Klippen und Kanten", text: "Halten Sie Abstand von Klippenrändern, Rinnen und unterspülten Ufern. Lassen Sie einen Ball liegen, der nahe an einer Kante liegt." },
      { title: "Wasser und Gezeiten", text: "Ufer, Bäche und Teiche können tief, reißend oder weich sein. Die Flut kann Ihnen den Rückweg abschneiden. Lassen Sie einen Ball im Wasser liegen." },
      { title: "Straßen", text: "Auf Straßen und Wegen können Fahrzeuge und Fußgänger unterwegs sein. Warten Sie, bis sie vorbei sind, und schauen Sie beim Überqueren nach beiden Seiten." },
      { title: "Steile und nasse Wege", text: "Wege können steil, rutschig oder schadhaft sein. Nehmen Sie den Weg, der für Sie und den Tag der richtige ist." },
    ],
    club: "Vom Club",
    nearby: {
      cliff: "Klippe oder Steilkante an dieser Bahn: Halten Sie Abstand und lassen Sie einen Ball nahe der Kante liegen.",
      water: "Wasser an dieser Bahn: Lassen Sie einen Ball darin liegen und achten Sie am Ufer auf die Gezeiten.",
      road: "An dieser Bahn verläuft eine Straße: Warten Sie mit dem Schlag, bis Fahrzeuge und Fußgänger vorbei sind.",
      boundary: "An dieser Bahn verläuft die Platzgrenze: Dahinter sind andere Menschen; spielen Sie nie über sie hinweg.",
    },
  },

  club: {
    courses: "Plätze",
    openGuide: "Platzführer öffnen",
  },

  notFound: {
    title: "Im Aus",
    text: "Unter dieser Adresse gibt es keine Seite. Vielleicht ist sie umgezogen, oder der Link enthält einen Fehler.",
    back: "Zurück zum Platzführer",
  },

  footer: {
    surveyed: (date) => `Vermessen am ${date}`,
    cautions: "Sicherheitshinweise",
    figures: "So wird gemessen",
    measured: "Alle Angaben sind aus der Vermessung berechnet, keine ist von Hand eingetragen.",
  },

  sheet: {
    north: "Norden",
    surveyOf: "Vermessung:",
  },
};
