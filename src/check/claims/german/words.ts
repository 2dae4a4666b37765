/** German words the patterns are made of, in their plain form (spell.ts). */

export const NUMBERS: Readonly<Record<string, number>> = {
  halb: 0.5,
  "ein halb": 0.5,
  ein: 1,
  "ein ganz": 1,
  "ein gut": 1,
  anderthalb: 1.5,
  zwei: 2,
  drei: 3,
  vier: 4,
  fünf: 5,
  sechs: 6,
  sieben: 7,
  acht: 8,
  neun: 9,
  zehn: 10,
  zweimal: 2,
  dreimal: 3,
};

export const SIDES: Readonly<Record<string, "left" | "right" | "short" | "long">> = {
  links: "left",
  linke: "left",
  rechts: "right",
  rechte: "right",
  vor: "short",
  vorne: "short",
  vordere: "short",
  kurz: "short",
  "kurz und": "short",
  davor: "short",
  eingang: "short",
  hinaus: "long",
  grün: "long",
  dahinter: "long",
  hinter: "long",
  hinten: "long",
  hintere: "long",
  lang: "long",
  "lang und": "long",
};

/** Words that open a prepositional phrase or a clause: no adjective stands before a noun in their shape. */
const NO_ADJECTIVE =
  "an|auf|aus|out|bei|bis|durch|für|gegen|hinter|in|mit|nach|neben|ohne|über|um|unter|von|vor|zu|zwischen|und|oder|aber|denn|weil|da|dass|wo|wenn|als|wie|der|die|das|den|dem|des|ein|kein|nicht|ist|sind|hat|haben|liegt|liegen|es|sie|man|links|rechts|richtung|sondern|noch|weder|entlang|vorbei|ab|gibt|wird|werden|wartet|warten|steht|stehen";

/** Parts for {@link phrase}. Those that carry a particular are captured. */
export const PARTS: Readonly<Record<string, string>> = {
  // What is captured.
  no: "kein|kein einzig|ohne|ohne ein|nirgends ein|nirgends",
  not: "nicht|nie|niemals|keineswegs|keinesfalls",
  lat: "links|rechts|linke|rechte",
  dep: "vor|hinter|vorne|hinten|kurz|lang",
  clat: "links|rechts|linke|rechte",
  cdep: "vor|hinter|vorne|hinten|vordere|hintere|kurz|lang",
  both: "beidseits|beide seite|links wie rechts|beide flanke",
  num: "\\d+|ein halb|halb|anderthalb|ein ganz|ein|zwei|drei|vier|fünf|sechs|sieben|acht|neun|zehn",
  strong: "sehr|extrem|äußerst|ausgesprochen|überaus|besonders|ungewöhnlich|außerordentlich",
  compass: "nordosten|nordwesten|südosten|südwesten|norden|süden|osten|westen",
  unit: "metres|yards",
  // What is not.
  det: "the|der|die|das|den|dem|ein|dies|ihr|unser|sein|all|mehrere|einige|beide|lauter|viel|weiter|jede|jeder|jedes",
  adjective: `(?!(?:${NO_ADJECTIVE}) )[a-zäöüß]+-?`,
  degree:
    "sehr|extrem|äußerst|ausgesprochen|überaus|besonders|ungewöhnlich|außerordentlich|recht|ziemlich|eher|etwas|leicht|ein wenig|sanft|steil|stark|deutlich|kräftig|stetig|allmählich|gleichmäßig|völlig|vollkommen|vollständig|komplett|ganz|total|absolut|nahezu|weitgehend|durchweg|durchgehend|größtenteils|überwiegend|auch|wirklich|angenehm|klar|merklich|spürbar|scharf|wesentlich|überraschend|auffallend|relativ|insgesamt|noch|schon|hier|dort|zunächst|dann|nur|bloß|so|viel|gut|weit",
  adverb:
    "dicht|direkt|unmittelbar|knapp|eng|nah|nahe|ganz|weit|etwas|leicht|gleich|noch|auch|schon|hier|dort|da|immer|stets|ebenfalls|zudem|außerdem|allerdings|jedoch|dagegen|nur|allein|bereits|zugleich|durchgehend|durchweg|überall|im|spiel|auf (?:der )?(?:ganz|voll|gesamt) länge|(?:auf|in) drive-? ?länge|(?:die|das|den) ganz (?:bahn|loch|weg|zeit)|von anfang an|in dem spiel|(?:in|auf höhe) der landezone|(?:bei|nach) \\d+ metres|von dem abschlag(?: bis)? zu dem grün|bis zu dem grün|tief|halb|schützend|einladend|quer|weiter|seitlich|beide|all|gefährlich|bedrohlich|drohend|verlockend|lauernd",
  link: "liegt|liegen|lauert|lauern|wartet|warten|steht|stehen|ist|sind|gibt es|verläuft|verlaufen|zieht sich|ziehen sich|läuft|laufen|fließt|fließen|beginnt|beginnen|droht|drohen|kommt|kommen|findet sich|finden sich|finden sie|findet man|haben sie|haben wir|hat man|begleitet|begleiten|folgt|folgen|erstreckt sich|erstrecken sich|schließt sich|grenzt|befindet sich|befinden sich|plätschert|reicht|reichen|breitet sich|sitzt|sitzen|rückt|rücken|stört|stören|erwartet|erwarten|fängt|fangen|sammelt|sammeln|schluckt|verschluckt|bestraft|bestrafen|engt|engen|ragt|ragen|leistet|öffnet sich|wächst|wachsen",
  guards:
    "begleitet|begleiten|bewacht|bewachen|schützt|schützen|verteidigt|verteidigen|säumt|säumen|begrenzt|begrenzen|flankiert|flankieren|sichert|sichern|deckt|decken|umrahmt|beschützt|beschützen|versperrt|versperren|behütet|hütet|hüten|rahmt|rahmen|engt|engen|bedroht|bedrohen|umspielt",
  guarded:
    "bewacht|geschützt|verteidigt|gesäumt|begrenzt|flankiert|gesichert|umgeben|beschützt|eingerahmt|eingefasst|eingeengt|gedeckt|bedroht",
  us: "uns|sie|den spieler|die spieler|den golfer|jeden|einen|mancher ball|den ball|die bälle",
  object:
    "das grün|die fahne|das fairway|den fairway|die bahn|die linie|den abschlag|den eingang|die landezone|das loch|den drive",
  bunker: "bunker|sand(?! (?:iron|wedge))|named_bunker_\\d+",
  water: "wasser|teich|see|meer|bucht|strand|bach|graben|fluss|kanal|priel|penalty area|lagune|küste|named_water_\\d+",
  // What there is none of when there is no water at all; a hole without a burn may have a pond.
  "any-water": "wasser|penalty area",
  sea: "meer|see|bucht|strand|ufer|küste|klippe|wasser|sund|fjord",
  "out-of-bounds":
    "out(?! (?:dem|der|den|ein|dies|ihm|ihnen|all|jed|beide|ihr|unser|sicht|rough|tief|[a-zäöüß]+ (?:bunker|rough|lage|entfernung|richtung)))(?: grenze)?|ausgrenze|grenze(?! (?:zwischen|zu|des|der|von))|out of bounds|weiß (?:pfosten|pfahl|pflock)|named_boundary_\\d+",
  trees: "baum|wald|kiefer|fichte|eiche|birke|pappel|erle|buche|tanne|baumreihe|baumgruppe|named_trees_\\d+",
  gorse: "ginster|heide|busch|named_gorse_\\d+",
  wall: "mauer|zaun|hecke|named_wall_\\d+",
  road: "straße|feldweg|named_road_\\d+",
  subject: "(?:(?:die|das|dies|unser) )?(?:ganz )?(?:bahn|loch|par [345]|es|sie)",
};
