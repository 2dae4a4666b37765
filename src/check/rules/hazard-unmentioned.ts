import { REFERENCE_PLAYERS } from "../../measure/players.ts";
import type { Thing, ThingClass } from "../facts.ts";
import { tipTee } from "../facts.ts";
import { ENGLISH_THINGS } from "../claims/english/index.ts";
import { at, perHole } from "../rule.ts";
import { list } from "../say.ts";

/** Within reach of a scratch man's drive. */
const DRIVE_METRES = REFERENCE_PLAYERS[0]!.driveMetres;
const IN_PLAY: ReadonlySet<ThingClass> = new Set<ThingClass>(["bunker", "water", "out-of-bounds"]);

export const hazardUnmentioned = perHole({
  name: "hazard-unmentioned",
  severity: "note",
  about: "A hazard within reach of a drive or by the green that the tip does not mention.",
  look: (hole, context) => {
    const facts = context.factsOf(hole);
    const tee = tipTee(hole);
    if (!facts || !tee || hole.hole.tip.markdown.trim() === "" || !/^en\b/i.test(context.club.language)) return [];
    const text = hole.hole.tip.markdown.toLowerCase();
    const inReach = (thing: Thing): boolean =>
      tee.hazards.some(({ id, inCorridor, reachMetres }) => id === thing.id && inCorridor && reachMetres <= DRIVE_METRES) || thing.where.green.surely.size > 0;
    const mentioned = (thing: Thing): boolean =>
      (thing.name !== undefined && text.includes(thing.name.toLowerCase().replace(/^the /, ""))) ||
      text.includes(`[${thing.id}]`) ||
      text.includes(`to=${thing.id}`) ||
      thing.classes.some((one) => ENGLISH_THINGS[one].test(text));
    const left = facts.things.filter((thing) => thing.classes.some((one) => IN_PLAY.has(one)) && thing.kind !== "coastline" && inReach(thing) && !mentioned(thing));
    if (left.length === 0) return [];
    return [at(hole.hole.tip.place, `The tip does not mention ${list(left.map(({ name, id }) => name ?? id))}, which ${left.length === 1 ? "is" : "are"} in play. Say what to do about ${left.length === 1 ? "it" : "them"}.`)];
  },
});
