/**
 * Offers a flyover where a page has a player for one, and loads map and film only when
 * asked. `data-state` on the player says where it stands: absent, then `loading`, `ready`
 * or `failed`. When it fails, the stills and the text of the page are what they were.
 */
import * as attr from "../contract/attributes.ts";
import type { Player } from "./flyover/player.ts";
import type { IslandWords } from "../words/island-words.ts";
import { partsOf, type Parts } from "./flyover/parts.ts";
import { islandWords } from "./island-words.ts";
import { MapFailure } from "./map/failure.ts";
import { fetched, fontsOf } from "./map/page-side.ts";
import { openable, type Turn } from "./openable.ts";
import type { Opening } from "./opening.ts";

const root = document.querySelector<HTMLElement>(`[${attr.film}]`);
if (root !== null) offer(partsOf(root));

function offer(parts: Parts): void {
  const { root, start, firstWords } = parts;
  const stillness = matchMedia("(prefers-reduced-motion: reduce)").matches;
  let words: IslandWords["film"] | undefined;

  const say = (kind: Opening<never, never>["kind"], text: string): void => {
    if (kind === "closed") root.removeAttribute(attr.state);
    else root.setAttribute(attr.state, kind);
    parts.status.textContent = text;
    start.disabled = kind === "loading";
    // The picture must have its place for the map to know its size.
    parts.player.hidden = kind !== "loading" && kind !== "ready";
    start.hidden = kind === "ready";
  };

  const player = openable<Player, MapFailure>({
    load: (turn) =>
      open(
        parts,
        islandWords().then(({ film }) => (words = film)),
        turn,
      ),
    reasonOf: (cause) => (cause instanceof MapFailure ? cause : new MapFailure("data", cause)),
    show(state) {
      switch (state.kind) {
        case "closed":
          say("closed", "");
          return start.focus({ preventScroll: true });
        case "loading":
          return say("loading", firstWords.loading);
        case "failed":
          console.warn("Flyover:", state.reason.failure, state.reason.cause ?? "");
          return say("failed", words?.failed[state.reason.failure] ?? firstWords.notLoaded);
        case "ready":
          say("ready", "");
          root.scrollIntoView({ block: "nearest", behavior: "instant" });
          parts.place.focus({ preventScroll: true });
          if (!stillness) state.thing.play();
      }
    },
  });

  root.hidden = false;
  // Who wants stillness meets the stills first, and the film by asking for it after them.
  const stills = document.querySelector(`[${attr.filmStills}]`);
  if (stillness && stills !== null) stills.after(root);
  if (!canDraw()) {
    say("failed", firstWords.notDrawn);
    start.hidden = true;
    return;
  }
  start.addEventListener("click", player.open);
}

/** Whether the device draws in three dimensions at all. */
function canDraw(): boolean {
  const context = document.createElement("canvas").getContext("webgl2");
  context?.getExtension("WEBGL_lose_context")?.loseContext();
  return context !== null;
}

async function open(
  parts: Parts,
  speaking: Promise<IslandWords["film"]>,
  { signal, close, fail }: Turn<MapFailure>,
): Promise<Player> {
  const address = new URL(parts.root.getAttribute(attr.courseData) ?? "", document.baseURI);
  const [{ openPlayer }, words, film, course] = await Promise.all([
    import("./flyover/player.ts"),
    speaking,
    fetched(new URL(parts.root.getAttribute(attr.film) ?? "", document.baseURI), signal),
    fetched(address, signal),
  ]);
  return openPlayer({ parts, words, film, course, address, fonts: fontsOf(parts.root), signal, close, fail });
}
