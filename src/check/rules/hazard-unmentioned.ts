import { REFERENCE_PLAYERS } from "../../measure/players.ts";
import { isHazard, type ThingClass } from "../../course/kinds.ts";
import type { Thing } from "../facts.ts";
import { defaultTee } from "../../measure/default-tee.ts";
import { wordsRead } from "../claims/find.ts";
import { lexiconFor } from "../claims/lexicons.ts";
import { at, perHole } from "../rule.ts";
import { list } from "../say.ts";
import { namedFor, perTip } from "../tips.ts";

/** Within reach of a scratch man's drive. */
const DRIVE_METRES = REFERENCE_PLAYERS[0]!.driveMetres;
const IN_PLAY: ReadonlySet<ThingClass> = new Set<ThingClass>(["bunker", "water", "out-of-bounds"]);

export const hazardUnmentioned = perHole({
  name: "hazard-unmentioned",
  severity: "note",
  about: "A hazard within reach of a drive or by the green that the tip does not mention.",
  look: perTip((one, hole, context) => {
    const measured = context.factsOf(hole);
    const tee = defaultTee(hole);
    const lexicon = lexiconFor(one.language);
    const { markdown, place } = one.tip;
    if (!measured || !tee || !lexicon || markdown.trim() === "") return [];
    const facts = namedFor(measured, one);
    const text = markdown.toLowerCase();
    const words = wordsRead(markdown, facts, lexicon);
    const inReach = (thing: Thing): boolean =>
      tee.hazards.some(
        ({ id, inCorridor, reachMetres }) => id === thing.id && inCorridor && reachMetres <= DRIVE_METRES,
      ) || thing.where.green.surely.size > 0;
    const mentioned = (thing: Thing): boolean =>
      (thing.name !== undefined && text.includes(thing.name.toLowerCase().replace(/^the /, ""))) ||
      text.includes(`[${thing.id}]`) ||
      text.includes(`to=${thing.id}`) ||
      thing.classes.some((kind) => lexicon.mentions[kind].test(words));
    const inPlay = ({ kind, classes }: Thing): boolean =>
      kind !== "coastline" && (isHazard(kind) || classes.some((one) => IN_PLAY.has(one)));
    const left = facts.things.filter((thing) => inPlay(thing) && inReach(thing) && !mentioned(thing));
    if (left.length === 0) return [];
    return [
      at(
        place,
        `The tip does not mention ${list(left.map(({ name, id }) => name ?? id))}, which ${left.length === 1 ? "is" : "are"} in play. Say what to do about ${left.length === 1 ? "it" : "them"}.`,
      ),
    ];
  }),
});
