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

const root = document.querySelector<HTMLElement>(`[${attr.film}]`);
if (root !== null) offer(partsOf(root));

function offer(parts: Parts): void {
  const stillness = matchMedia("(prefers-reduced-motion: reduce)").matches;
  let player: Player | undefined;
  let words: IslandWords["film"] | undefined;
  let wanted = 0;

  const say = (state: "loading" | "ready" | "failed" | undefined, text: string): void => {
    if (state === undefined) parts.root.removeAttribute(attr.state);
    else parts.root.setAttribute(attr.state, state);
    parts.status.textContent = text;
    parts.start.disabled = state === "loading";
    // The picture must have its place for the map to know its size.
    parts.player.hidden = state !== "loading" && state !== "ready";
    parts.start.hidden = state === "ready";
  };
  const end = (): void => {
    player?.remove();
    player = undefined;
    wanted++;
  };
  const fail = (failure: MapFailure): void => {
    end();
    console.warn("Flyover:", failure.failure, failure.cause ?? "");
    say("failed", words?.failed[failure.failure] ?? parts.firstWords.notLoaded);
  };
  const close = (): void => {
    end();
    say(undefined, "");
    parts.start.focus({ preventScroll: true });
  };

  parts.root.hidden = false;
  // Who wants stillness meets the stills first, and the film by asking for it after them.
  const stills = document.querySelector(`[${attr.filmStills}]`);
  if (stillness && stills !== null) stills.after(parts.root);
  if (!canDraw()) {
    say("failed", parts.firstWords.notDrawn);
    parts.start.hidden = true;
    return;
  }
  parts.start.addEventListener("click", () => {
    say("loading", parts.firstWords.loading);
    const asked = ++wanted;
    const speaking = islandWords().then(({ film }) => (words = film));
    void open(parts, speaking, close, fail).then(
      (opened) => {
        if (asked !== wanted) {
          opened.remove();
          return;
        }
        player = opened;
        say("ready", "");
        parts.root.scrollIntoView({ block: "nearest", behavior: "instant" });
        parts.place.focus({ preventScroll: true });
        if (!stillness) opened.play();
      },
      (cause: unknown) => {
        if (asked === wanted) fail(cause instanceof MapFailure ? cause : new MapFailure("data", cause));
      },
    );
  });
}

/** Whether the device draws in three dimensions at all. */
function canDraw(): boolean {
  const context = document.createElement("canvas").getContext("webgl2");
  context?.getExtension("WEBGL_lose_context")?.loseContext();
  return context !== null;
}

async function open(parts: Parts, speaking: Promise<IslandWords["film"]>, close: () => void, fail: (failure: MapFailure) => void): Promise<Player> {
  const address = new URL(parts.root.getAttribute(attr.courseData) ?? "", document.baseURI);
  const [{ openPlayer }, words, film, course] = await Promise.all([
    import("./flyover/player.ts"),
    speaking,
    fetched(new URL(parts.root.getAttribute(attr.film) ?? "", document.baseURI)),
    fetched(address),
  ]);
  return openPlayer({ parts, words, film, course, address, fonts: fontsOf(parts.root), close, fail });
}
