/**
 * German words in the form the patterns know, with those of their forms that endings alone
 * do not lead to. Nouns are told from other words by their capital.
 */

/** Each line: the form the patterns know, a colon, its other forms. Regular endings need no entry. */
const lines = (text: string): ReadonlyMap<string, string> =>
  new Map(
    text
      .trim()
      .split("\n")
      .flatMap((line) => {
        const [head, rest = ""] = line.split(":");
        const lemma = head!.trim();
        return [lemma, ...rest.trim().split(/\s+/).filter(Boolean)].map((form): [string, string] => [form, lemma]);
      }),
  );

export const NOUNS = lines(`
bunker: sandbunker topfbunker pottbunker querbunker grasbunker sandhindernis sandhindernisse sandloch
sand
grün: green greens puttgrün puttfläche grünfläche
fläche
fairway: fairways fairwaystreifen fairwayband
bahn: spielbahn spielbahnen
loch: löcher löchern golfloch
abschlag: abschläge abschlägen tee tees teebox abschlagsbox
drive: teeshot teeshots teeschlag abschlagsschlag eröffnungsschlag
schlag: schläge schlägen
schläger
annäherung: annäherungsschlag annäherungsschläge annäherungsschlägen approach
fahne: flagge pin stock flaggenstock
landezone: landefläche landebereich landegebiet landezonen landeflächen drivezone
wasser: gewässer wasserhindernis wasserhindernisse wasserfläche wasserlauf wasserläufe rinnsal
teich: weiher tümpel ententeich seerosenteich dorfteich
see: seen
meer: ozean nordsee ostsee
bucht: meeresbucht förde
strand: strände sandstrand
ufer: seeufer
küste: steilküste küstenlinie
klippe
bach: bäche bächen bächlein burn
graben: gräben wassergraben wassergräben entwässerungsgraben
fluss: flüsse flüssen
kanal: kanäle
priel
penalty
area: areas
baum: bäume bäumen
wald: wälder wäldern wäldchen waldrand waldstück gehölz forst
kiefer
fichte
eiche
birke
pappel
erle
buche
tanne
baumreihe
baumgruppe
ginster: stechginster ginsterbusch ginsterbüsche
heide: heidekraut
busch: büsche büschen buschwerk gebüsch gestrüpp
mauer: steinmauer steinwall bruchsteinmauer
zaun: zäune zäunen weidezaun
hecke
straße: landstraße küstenstraße dorfstraße fahrstraße
feldweg: fahrweg wirtschaftsweg schotterweg
weg: wege wegs pfad fußweg wanderweg spazierweg
ausgrenze: auslinie ausgrenzen auspfosten auspfähle auspfählen auszaun ausmauer grenzzaun grenzmauer grenzpfosten grenzpfähle grenzlinie platzgrenze grundstücksgrenze
grenze
pfosten
pfahl: pfähle pfählen
pflock: pflöcke pflöcken
dogleg: doglegs
knick
bogen: bögen
kurve: kehre schwenk
biegung
linie: spiellinie ideallinie
seite
flanke
hälfte
kante
hand
ecke
rand: ränder
eingang: grüneingang grüneinganges
norden: nord
süden: süd
osten: ost
westen: west
nordosten: nordost
nordwesten: nordwest
südosten: südost
südwesten: südwest
senke: bodensenke
mulde: kuhle delle schüssel
kessel
plateau: hochplateau
podest: sockel
kuppe: anhöhe
hügel
stufe: stufen
ebene: etage
terrasse
gefälle: neigung hanglage
hang: hänge
anstieg: steigung
höhenunterschied: höhenunterschiede
gelände: terrain
wind: rückenwind gegenwind seitenwind westwind ostwind nordwind südwind brise sturm
putt: putts
chip: chips
vorgabe: schlagvorgabe vorgabenschlüssel
handicap: hcp
index
tiefe
breite
platz: plätze
runde
par
carry
`);

export const OTHERS = lines(`
ein: eine einen einem einer eines
kein: keine keinen keinem keiner keines keins
dies: diese dieser dieses diesen diesem
ihr: ihre ihren ihrem ihrer ihres
unser: unsere unseren unserem unserer unseres
sein: seine seinen seinem seiner seines
all: alle allen aller
alles
links: linksseitig
rechts: rechtsseitig
linke: linker linken linkes linkem
rechte: rechter rechten rechtes rechtem
beide: beiden beider beides
beidseits: beidseitig beiderseits
vorne: vorn
vordere: vorderer vorderen vorderes vorderem
hinten
hintere: hinterer hinteren hinteres hinterem
breit
breiter
schmal
eng
weit
großzügig
reichlich
groß
klein
winzig
riesig
gewaltig
mächtig
geräumig
tief
flach
eben: topfeben brettleben tischeben pfannkucheneben brettflach topfflach
lang
kurz
länger
kürzer
höher
längste: längster längsten längstes längstem
kürzeste: kürzester kürzesten kürzestes kürzestem
gerade: gerader geraden gerades geradem
schnurgerade: kerzengerade pfeilgerade schnurgerader schnurgerades schnurgeraden kerzengerades kerzengerader pfeilgerades pfeilgerader
geradeaus: schnurstracks
blind
erhöht: erhaben
hoch: hohe hohen hoher hohes hohem
steil
leicht
sanft
scharf
stark
deutlich
abfallend
ansteigend
geneigt
hängend
gestuft
zweistufig: doppelstufig doppelstöckig
dreistufig
einstufig
geteilt: zweigeteilt
doppelt
einzig
liegend
gelegen
platziert
quer
erreichbar
einsehbar
sichtbar
verdeckt
versteckt
verborgen
unsichtbar
zwei: zweien
drei: dreien
halb
zweite: zweiten zweiter zweites
dritte: dritten dritter drittes
weiter: weiterer weiteres weiteren weitere weiterem
viel: viele vielen vieler
wenig: wenige wenigen
weniger
ganz: ganze ganzen ganzer ganzes
gesamt
echt
weiß
bessere: besserer besseres besseren
tückisch
schön
gut
`);

/** What stands for several words. */
export const WRITTEN_OUT: Readonly<Record<string, readonly string[]>> = {
  am: ["an", "dem"],
  im: ["in", "dem"],
  vom: ["von", "dem"],
  zum: ["zu", "dem"],
  zur: ["zu", "der"],
  beim: ["bei", "dem"],
  ans: ["an", "das"],
  ins: ["in", "das"],
  aufs: ["auf", "das"],
  ums: ["um", "das"],
  übers: ["über", "das"],
  fürs: ["für", "das"],
  durchs: ["durch", "das"],
  vors: ["vor", "das"],
  hinters: ["hinter", "das"],
  unters: ["unter", "das"],
  vorm: ["vor", "dem"],
  hinterm: ["hinter", "dem"],
  überm: ["über", "dem"],
  unterm: ["unter", "dem"],
  linkerhand: ["linke", "hand"],
  rechterhand: ["rechte", "hand"],
  linksherum: ["links", "herum"],
  rechtsherum: ["rechts", "herum"],
  linksdogleg: ["links", "dogleg"],
  rechtsdogleg: ["rechts", "dogleg"],
  linkskurve: ["links", "kurve"],
  rechtskurve: ["rechts", "kurve"],
  linksknick: ["links", "knick"],
  rechtsknick: ["rechts", "knick"],
  linksbogen: ["links", "bogen"],
  rechtsbogen: ["rechts", "bogen"],
  doppeldogleg: ["doppeldogleg"],
  dreischlagloch: ["drei", "schlag", "loch"],
  grünseite: ["seite", "des", "grün"],
  fairwayseite: ["seite", "des", "fairway"],
  bahnseite: ["seite", "der", "bahn"],
  fairwaybreite: ["breite", "des", "fairway"],
  riesengrün: ["riesig", "grün"],
  minigrün: ["klein", "grün"],
  inselgrün: ["inselgrün"],
  plateaugrün: ["plateaugrün"],
  stufengrün: ["stufengrün"],
  meter: ["metres"],
  metern: ["metres"],
  metres: ["metres"],
  m: ["metres"],
  yard: ["yards"],
  yards: ["yards"],
  yds: ["yards"],
  yd: ["yards"],
  oob: ["ausgrenze"],
};

/** Nouns that end a compound and say what the whole is; the word before them stays, with a hyphen. */
export const HEADS: readonly string[] = [
  "bunker",
  "teich",
  "weiher",
  "bach",
  "graben",
  "fluss",
  "wasser",
  "bucht",
  "strand",
  "küste",
  "wald",
  "baum",
  "bäume",
  "hecke",
  "mauer",
  "zaun",
  "straße",
  "grenze",
  "ginster",
  "heide",
];

/** Compounds that are not what their last part says: another hole's, the practice ground's, the railway. */
export const NOT_HEADS =
  /^(?:übungs|putting|pitch|nachbar|eisen|leit|ober|unter|grund|trink|leitungs|hoch|niedrig|ab|regen|auto|bau|stamm|lande)/;
