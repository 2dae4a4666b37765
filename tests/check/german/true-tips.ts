/**
 * Whole tips as clubs write them, true of the corpus's holes in every word: whatever is called
 * a contradiction here is a false alarm. Written after the corpus, in several voices and three
 * batches, each run once before it was looked at: 3 false alarms in the first 31 tips, 2 in the
 * next 15, none in the last 12.
 */
import type { HoleName } from "../corpus.ts";

export const TRUE_TIPS: readonly (readonly [HoleName, string])[] = [
  [
    "A",
    "Zum Auftakt ein ehrliches Loch ohne Geheimnisse. Die Bahn liegt flach und gerade vor Ihnen, das Fairway ist so breit, dass der Driver keine Angst machen muss. Nur nach rechts sollten Sie nicht verziehen, denn dort verläuft auf ganzer Länge die Ausgrenze. Der Bunker links ist bei etwa 210 Metern im Spiel. Wer ihn überfliegt, hat noch ein mittleres Eisen über den Bach.",
  ],
  [
    "A",
    "Hier wird der Score nicht am Abschlag, sondern am Grün gemacht. Der Mill Burn kreuzt das Fairway 35 Meter vor dem Grün und ist im Sommer kaum zu sehen. Das Grün selbst ist lang und eher schmal, fällt von hinten nach vorne und verzeiht keinen Putt von oben. Rechts vorn wartet ein Bunker, links ist genug kurz gemähtes Gras, um einen Fehler auszubügeln.",
  ],
  [
    "A",
    "Ein langes Par 4, bei dem die meisten Amateure drei Schläge bis aufs Grün brauchen. Machen Sie sich nichts daraus: Legen Sie vor dem Bach ab, spielen Sie ein volles Wedge unter die Fahne und nehmen Sie die Fünf mit Humor. Links neben dem Grün ist die sichere Seite. Hinter dem Grün ist nichts als Gras.",
  ],
  [
    "A",
    "Lassen Sie sich vom breiten Fairway nicht täuschen. Der Wind kommt meist von links und trägt jeden Slice über die Grenze. Zielen Sie auf die linke Kante, nicht auf die Mitte. Der Fairwaybunker auf dieser Seite ist flach, aus ihm erreicht man das Grün noch. Beim zweiten Schlag gilt: lieber zu lang als zu kurz, denn davor liegt der Bach.",
  ],
  [
    "A",
    "Vorgabe 5. Vom Abschlag sieht man die Fahne, den Bach sieht man nicht. Er liegt quer vor dem Grün, und zwar näher, als man glaubt. Der Bunker kurz rechts ist tief, das Aus rechts nicht weit. Vom linken Rand des Fairways ist der Winkel am besten. Auf dem Grün unter dem Loch bleiben: Bergab ist alles schnell.",
  ],
  [
    "A",
    "Der erste Abschlag, ein paar Zuschauer, und rechts das Aus. Atmen Sie durch. Das Fairway misst fünfzig Meter von links nach rechts, breiter wird es heute nicht mehr. Der einzige Fairwaybunker liegt links. Es gibt kein Wasser außer dem Bach, keine Bäume und keinen Knick. Danach kommt ein Dogleg, das den Drive wirklich prüft.",
  ],
  [
    "A",
    "Par 4, 380 Meter, eben wie ein Teller. Wenn die Fahne rechts steht, ist der Bunker vor dem Grün im Weg; steht sie links, ist er es nicht. Das Grün hängt zum Spieler. Ein Ball, der zu kurz kommt, rollt zurück Richtung Bach, aber nicht hinein.",
  ],
  [
    "B",
    "Das schwerste Loch auf dem Platz, Vorgabe 1. Die Bahn biegt nach 220 Metern links ab, und in der Ecke steht der Wald. Wer abkürzen will, muss hoch und lang über die Bäume. Der zweite Schlag geht bergauf auf ein Grün, das man vom Fairway aus nicht sieht. Nehmen Sie einen Schläger mehr.",
  ],
  [
    "B",
    "Ein Drive auf die rechte Seite, nicht zu lang, und dann ein blinder Schlag den Hang hinauf. Die Richtung gibt der Mast hinter dem Grün. Das Grün ist breit, aber nur zehn Meter tief. Hinten und links liegen Bunker, vorne wartet eine False Front. Es bleibt also wenig, und genau das ist der Witz des Lochs.",
  ],
  [
    "B",
    "Das Fairway ist hier so schmal wie nirgends sonst. Links stehen die Bäume, rechts wächst hohes Rough. Nach dem Knick steigt die Bahn zum Grün hin an, und zwar kräftig. Das Grün thront auf einem Plateau und hat zwei Stufen. Auf der falschen Stufe zu liegen kostet fast immer einen dritten Putt.",
  ],
  [
    "B",
    "Kein Wasser, kein Aus, und trotzdem fallen hier die meisten Doppelbogeys. Das liegt am Wald links und am flachen, quer liegenden Grün. Wer zu lang ist, liegt im Bunker dahinter, wer zu kurz bleibt, bekommt den Ball zurück. Rechts vom Grün ist die einzige Seite ohne Sand. Dort darf man verfehlen.",
  ],
  [
    "B",
    "Spielen Sie den Abschlag mit dem Holz 3 bis zur Ecke. Mehr Länge bringt nichts, weil das Fairway dann zu Ende ist. Von dort sind es noch knapp 140 Meter, zwölf Meter bergauf. Die obere Stufe liegt hinten. Ein Ball auf der unteren rollt gern wieder von der Vorderkante hinunter.",
  ],
  [
    "B",
    "Ein Dogleg nach links, das einen Draw belohnt. Ein Fade landet rechts im Rough, von wo das Grün kaum zu erreichen ist. Das Grün fällt leicht nach vorn. Der linke Bunker ist der tiefere. Wenn Sie unsicher sind, zielen Sie auf die Mitte der rechten Hälfte.",
  ],
  [
    "B",
    "Wer am zweiten Loch ein Par spielt, hat auf dem ganzen Platz gute Karten. Der Drive muss am Wald vorbei, die Annäherung muss hinauf, und der Putt muss über die Stufe. Rechts davon, wo kein Bunker liegt, ist genug Platz für einen Chip. Links davon ist Sand.",
  ],
  [
    "C",
    "Das kürzeste Loch des Platzes und sein bestes Bild. Vom hohen Abschlag geht es zehn Meter hinunter, über die Bucht auf ein breites Grün ohne Bunker. Nehmen Sie einen Schläger weniger, wenn kein Wind geht. Links ist das Wasser bis ans Grün heran, rechts ist Wiese. Der Fehler gehört also nach rechts.",
  ],
  [
    "C",
    "Alles hängt am Wind. Ohne ihn ist es ein Wedge, gegen ihn ein langes Eisen. Das Grün fällt von links nach rechts, Bälle laufen also vom Wasser weg. Es ist breiter als tief: Die Länge muss stimmen, die Richtung weniger. Hinter dem Grün steigt ein kleiner Wall an, der manchen Ball aufhält.",
  ],
  [
    "C",
    "Ein Par 3 über das Gull Inlet. Getragen werden muss der Ball von jedem Abschlag, auch vom vorderen. Wer das nicht mag, findet rechts keine Alternative, nur einen kürzeren Weg über dasselbe Wasser. Halten Sie bitte Abstand von der Kante. Bunker gibt es keine, das Wasser genügt.",
  ],
  [
    "C",
    "Von oben sieht alles einfach aus. Der Abschlag liegt weit über dem Grün, die Fahne ist klar zu sehen, und 150 Meter sind nicht viel. Doch links lauert die Bucht, und das Grün ist nicht tief. Unser Pro spielt auf die rechte Hälfte und lässt den Hang den Rest machen. Machen Sie es ihm nach.",
  ],
  [
    "C",
    "Vorgabe 9. Zwischen Abschlag und Grün liegt nichts als Wasser, dahinter ein breites, flach wirkendes Grün. Flach ist es nicht: Es neigt sich nach rechts. Ein Ball auf die linke Seite rollt zur Mitte. Lang ist besser als kurz, rechts besser als links.",
  ],
  [
    "C",
    "Am vierten Loch geht der Strand links weiter, hier aber endet er an der Bucht. Der Schlag geht bergab, der Ball fliegt länger, als man meint. Ein zu langer Ball bleibt im Gras hinter dem Grün liegen. Von dort chippt man bergab Richtung Wasser, was niemandem Freude macht.",
  ],
  [
    "D",
    "Das längste Loch des Platzes. Rechts begleitet Sie das Meer, links die Ausgrenze, dazwischen liegt ein welliges Fairway, das nach rechts hängt. Der Drive ist blind; läuten Sie die Glocke, wenn Sie die Landezone verlassen. Mit zwei Schlägen kommt hier fast niemand ans Grün. Drei gute sind genug.",
  ],
  [
    "D",
    "525 Meter von hinten, und jeder davon am Meer entlang. Die Bahn biegt erst rechts ab und kurz vor dem Grün wieder links. Der Bunker links vom Fairway ist die Ziellinie für alle, die ihn nicht erreichen. Halten Sie sich links, denn alles rollt nach rechts. Das Grün ist klein und eben.",
  ],
  [
    "D",
    "Bei ablandigem Wind ist es ein Kinderspiel, bei auflandigem ein Kampf. Ein Slice ist nass, ein Hook im Aus. Der zweite Schlag sollte vor dem Bunker links vor dem Grün liegen bleiben. Von rechts ist das Grün offen. Es hat keine Stufen und kaum Gefälle. Wer nah genug liegt, darf lochen.",
  ],
  [
    "D",
    "Sie sehen vom Abschlag weder das Fairway noch das Grün. Vertrauen Sie dem Richtungspfosten. Hinter der Kuppe fällt das Fairway von links nach rechts zum Meer hin ab, ein Ball auf der linken Seite rollt also in die Mitte. Danach wird alles übersichtlich. Der dritte Schlag ist ein Wedge auf ein kleines Ziel.",
  ],
  [
    "D",
    "Par 5, Vorgabe 3. Links Aus, rechts das Meer, da hilft nur Demut. Der Bunker nach 225 Metern liegt links und sammelt, was die Kuppe nach links lenkt. Kurz vor dem Grün liegt links noch einer. Rechts vom Grün ist Platz, bevor der Strand beginnt.",
  ],
  [
    "D",
    "Ein Loch für kluge Köpfe. Die Ecke rechts abzukürzen lohnt nicht: Dort liegt der Sound. Spielen Sie um die Biegung herum, nicht über sie. Vom Bunker links vor dem Grün abgesehen gibt es nahe der Fahne kein Hindernis. Und wenn der Ball doch einmal links über die Grenze geht: Es ist nur ein Spiel.",
  ],
  [
    "E",
    "Ein kurzes Par 4, das mit dem Drive erreichbar ist, wenn der Wind hilft. Rechts vom Grün liegt der Teich, links warten drei Bunker. Das Fairway ist mittelbreit und gerade. Mutige greifen an, Kluge legen auf 80 Meter vor und pitchen zur Fahne.",
  ],
  [
    "E",
    "320 Meter, gerade nach Norden. Der Teich rechts ist nur für den im Spiel, der die Fahne rechts anspielt. Die drei Bunker liegen alle links am Grün und sind flach. Vor dem Grün ist der Weg offen, man kann den Ball rollen lassen. Hinten ist Platz.",
  ],
  [
    "E",
    "Die Versuchung ist groß, das Risiko auch. Ein Drive nach rechts endet im Teich, ein Drive nach links im Sand. Wer vorlegt, hat einen einfachen Pitch. Das Grün ist rund und 24 Meter tief. Ob es hängt, müssen Sie selbst herausfinden.",
  ],
  [
    "E",
    "Vorgabe 7, aber eine der besten Birdiechancen. Links der Fahne ist immer richtig, weil der Teich rechts liegt. Kein Aus, keine Bäume, kein Bach. Ein Hybrid und ein Wedge genügen. Am Grün den Teich im Auge behalten: Das Ufer ist steil, bitte nicht hinuntersteigen.",
  ],
  [
    "E",
    "Früher lag der Teich links, und die Bunker gab es noch nicht. Heute ist es umgekehrt gefährlich: rechts nass, links sandig. Wer an der Vier das Meer gesehen hat, lacht über den Teich. Er ist trotzdem tief.",
  ],
  [
    "A",
    "Keine Bahn, vor der man sich fürchten muss, aber eine, die man nicht unterschätzen darf. Es gibt hier keinen Bunker, der nicht irgendwann jemandem das Turnier gekostet hätte, auch wenn es nur zwei sind. Am Abschlag gilt: Rechts der Fairwaymitte rückt das Aus näher, links davon der Bunker. Der goldene Mittelweg ist fünfzig Meter breit.",
  ],
  [
    "A",
    "Der Mill Burn ist das ganze Thema dieses Lochs. Er fließt 35 Meter vor dem Grün quer durch die Bahn, und im Frühjahr führt er so viel Wasser, dass kein Ball wieder auftaucht. Eine Brücke liegt rechts. Spielen Sie den zweiten Schlag so, als gäbe es kein kurzes Gras davor.",
  ],
  [
    "A",
    "Ein kleiner Hinweis für Gäste: Die weißen Pfosten rechts gelten auf der ganzen Länge, auch wenn dahinter Fairway zu sehen ist, denn das gehört zu Loch 5. Die Entfernungssäulen stehen links. Der Bunker am Grün, rechts vorne, hat eine hohe Lippe. Aus ihm heraus fällt das Grün von Ihnen weg, nach links hin, jedenfalls fühlt es sich so an.",
  ],
  [
    "A",
    "Eher ein Loch für den Kopf. Vom Tee aus ist alles zu sehen, die Bahn ist gerade, das Gelände eben, die Verlockung groß. Wer hier mit Gewalt das Grün angreifen will, bringt Bach und Bunker ins Spiel. Wer ihn liegen lässt und auf die linke Grünhälfte zielt, hat einen Putt bergauf.",
  ],
  [
    "B",
    "Vom Abschlag aus sehen Sie nur die Hälfte des Lochs. Die Bahn verschwindet hinter dem Wald nach links, das Grün liegt hoch oben auf einer Kuppe. Zielen Sie auf den rechten Rand des Waldes. Ein Ball, der weiter rechts landet, hat einen längeren Weg, aber freie Sicht auf den Mast. Hinter dem Grün fällt es steil ab; dort fängt ein Bunker das Schlimmste auf.",
  ],
  [
    "B",
    "Alle reden vom Wald, dabei ist das Grün das Problem. Es ist nicht tief, es ist zweistufig, und vorne schickt es zurück, was nicht weit genug fliegt. Am besten liegt man auf der unteren Stufe, unterhalb der Fahne. Bunker links, Bunker hinten, und rechts ein Hang, von dem man hinaufchippen muss.",
  ],
  [
    "B",
    "Für Damen wie Herren Vorgabe 1. Die 334 Meter von vorne sind nicht weniger schwer als die 364 von hinten. Der Drive soll gerade sein, nicht lang; das Fairway ist keine zwanzig Meter breit. Danach geht es links um die Ecke und den Hügel hinauf. Ein Bogey ist hier kein Beinbruch.",
  ],
  [
    "B",
    "An der Ecke des Waldes knickt das Fairway ab. Wer mit dem Driver geradeaus spielt, landet am Ende des Fairways im Rough rechts. Von dort ist das Grün zwar näher, aber die Bäume links nehmen die Linie. Im Zweifel ein Eisen zurück in die Mitte und mit dem dritten Schlag angreifen.",
  ],
  [
    "C",
    "Es sind nur 150 Meter, doch unter Ihnen liegt das Meer. Das Gull Inlet zieht sich von links bis weit vor das Grün. Das Grün ist groß genug, quer liegend und nach rechts geneigt. Wir empfehlen die Mitte, immer die Mitte. Die Drop Zone liegt rechts, 60 Meter vor dem Grün.",
  ],
  [
    "C",
    "Kein Bunker, kein Baum, kein Aus: Auf diesem Loch braucht es das alles nicht. Wer links verfehlt, verliert einen Ball, wer kurz bleibt, auch. Wer zu lang ist, hat einen Chip zurück. Der Abschlag liegt so hoch, dass der Wind hier stärker ist als unten. Bei Rückenwind reicht ein Wedge, bei Gegenwind nimmt selbst der Pro ein Holz.",
  ],
  [
    "D",
    "Achtung Fußgänger: Der Küstenweg läuft rechts am Strand entlang, warten Sie bitte. Die Bahn selbst folgt dem Ufer in einem langen Bogen nach rechts, bevor sie am Ende nach links zum Grün schwenkt. Das Fairway neigt sich überall zum Wasser. Links oben verläuft die Grenze. Das Grün ist so klein, dass ein Sandwedge immer die bessere Wahl ist als ein langes Eisen.",
  ],
  [
    "D",
    "Kein Par 5 der Insel ist länger, keines schöner. Sie brauchen drei Schläge, und keiner davon muss ein Driver sein. Der erste: über den Pfosten, etwas links. Der zweite: am Bunker links vorbei auf die breite Stelle. Der dritte: ein Pitch auf ein Grün, das auf keiner Seite Schutz bietet, außer links vorne, wo ein Bunker liegt.",
  ],
  [
    "D",
    "Vom Fairway aus ist das Grün gut zu sehen, vom Abschlag nicht einmal das Fairway. Wer nach rechts abkommt, spielt vom Strand, wenn Ebbe ist, sonst gar nicht mehr. Der Bunker links sieht näher aus, als er ist: Bis er erreicht ist, sind es 225 Meter.",
  ],
  [
    "E",
    "Der Teich rechts am Grün ist der Grund, weshalb viele hier mit dem Eisen abschlagen. Nötig ist das nicht: Er beginnt erst auf Höhe des Grüns. Links gibt es Bunker, drei an der Zahl, aber aus ihnen ist schon manches Par gelungen. Das Fairway ist weder breit noch schmal, das Grün weder groß noch klein.",
  ],
  [
    "E",
    "Mit 320 Metern das zweitkürzeste Loch. Ein Longhitter erreicht das Grün mit dem Drive. Für alle anderen ist ein Schlag auf 100 Meter ideal. Aus dem linken Rough versperren die Bunker den Weg, aus dem rechten der Teich. Die Fahne steht gern rechts, und dann ist links von ihr die bessere Seite.",
  ],
  [
    "A",
    "Der Drive ist die Pflicht, das Eisen über den Bach die Kür. Rechts lauert das Aus, links ein Bunker, den nur erreicht, wer ordentlich trifft. Das Grün liegt eben zum Fairway, ist tief und hängt deutlich nach vorn. Flach gespielte Bälle bremst der Bach. Von hinten putten ist verboten, sagt unser Pro mit einem Augenzwinkern.",
  ],
  [
    "A",
    "Wie breit ein Fairway sein kann, sieht man hier. Trotzdem landen jedes Jahr hundert Bälle jenseits der Grenze. Das Geheimnis: links aufteen, links zielen, links bleiben. Vor dem Grün dann nicht mehr links denken, denn der Bunker liegt rechts und die Fahne meist auch. Zwischen Bach und Grün sind 30 Meter Platz.",
  ],
  [
    "A",
    "Steht der Wind gegen Sie, ist es ein Par 5; hilft er, ein Drive und ein Wedge. Am Loch selbst ändert das nichts: 380 Meter, gerade, eben. Ein Bach quert die Bahn kurz vor dem Grün, die Ausgrenze verläuft rechts. Hinter dem Grün wartet kein Unheil. Die Annäherung darf also ruhig lang sein.",
  ],
  [
    "B",
    "Ein Loch in drei Akten. Erstens der Drive an den Bäumen vorbei, die links bis ans Fairway reichen. Zweitens der Schlag bergauf, blind, mit einem Schläger mehr. Drittens das Grün: vorne eine False Front, in der Mitte eine Stufe, hinten ein Bunker. Links wartet noch einer. Wer mit Par geht, darf im Clubhaus davon erzählen.",
  ],
  [
    "B",
    "Zu weit rechts kostet Sie das Rough, zu weit links der Wald. Das Fairway ist an der schmalsten Stelle keine zwanzig Schritte breit. Am Knick beginnt der Anstieg zum Grün. Die Fahne sehen Sie erst oben. Gehen Sie ruhig vor und schauen Sie nach, wo sie steht; der Weg führt rechts hinauf.",
  ],
  [
    "B",
    "Rechts am Grün darf man verfehlen, links und hinten nicht, da liegen die Bunker. Das Grün ist dreimal so breit wie tief. Es liegt wie eine Kanzel über dem Fairway. Eine Fahne links hinten ist nichts für Helden. Unten zu bleiben heißt noch einmal chippen, oben zu liegen heißt vorsichtig putten.",
  ],
  [
    "C",
    "Schauen Sie erst einmal: Links die Bucht, geradeaus das Grün, darunter die Möwen. Dann denken Sie nach. Es geht bergab, also ein Schläger weniger, und das Grün hängt nach rechts, also darf der Ball links beginnen, wenn er weit genug fliegt. Zu kurz ist immer Wasser. Rechts vorbei ist kein Unglück.",
  ],
  [
    "C",
    "Ein Postkartenloch mit Tücken. Der Abschlag thront hoch über dem Inlet. Die Tiefe des Grüns wird oft überschätzt, es sind nur 16 Meter, die Breite unterschätzt. Hinter dem Grün und rechts davon wächst dichtes Gras. Ein Bunker hätte hier nur gestört. Bei Sturm spielen manche absichtlich nach rechts und chippen.",
  ],
  [
    "D",
    "Links der Zaun, rechts die Wellen. Den Zaun kann man nicht versetzen, die Wellen auch nicht, also gerade bleiben. Der Drive fliegt über die Kuppe außer Sicht. Dahinter rollt er nach rechts, denn das Fairway hängt. Ein Bunker lauert links für alle, die das wissen und übertreiben. Danach kommt der Knick nach rechts, am Ende einer nach links.",
  ],
  [
    "D",
    "Am besten spielt man es wie drei kurze Löcher. Erstes: Hybrid über den Pfosten. Zweites: Hybrid am Meer entlang. Drittes: ein Wedge auf das kleine, ebene Grün, an dem links vorne ein Bunker liegt und rechts nichts. Wer so spielt, sieht das Aus nur von weitem und das Meer nur beim Fotografieren.",
  ],
  [
    "E",
    "Der kürzeste Vierer auf dem Platz, und der gierigste. Der Teich liegt rechts neben dem Grün, nicht davor, und die drei Bunker liegen links. Vorne ist offen. Ein gerader Drive rollt bis aufs Grün, ein krummer nicht. Das Fairway ist flach und gerade, Ausreden gibt es also keine. Hinter dem Grün führt ein Weg zum nächsten Abschlag, er ist asphaltiert.",
  ],
  [
    "E",
    "Achten Sie auf die Enten im Teich rechts. Sonst gibt es wenig zu beachten: drei Bunker links, ein rundes Grün, 320 Meter nach Norden. Bleibt der Ball links vom Teich und rechts der Bunker, ist ein Birdie drin. Die Roten haben 290 Meter, da reicht manchmal ein Holz.",
  ],
];
