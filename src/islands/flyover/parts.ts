/** The player's elements, which the page brings (src/components/FilmPlayer.astro). */

export interface Parts {
  readonly root: HTMLElement;
  readonly start: HTMLButtonElement;
  readonly status: HTMLElement;
  readonly player: HTMLElement;
  readonly view: HTMLElement;
  readonly chapter: HTMLElement;
  readonly caption: HTMLElement;
  readonly place: HTMLInputElement;
  readonly time: HTMLElement;
  readonly toggle: HTMLButtonElement;
  readonly previous: HTMLButtonElement;
  readonly next: HTMLButtonElement;
  readonly speed: HTMLSelectElement;
  readonly captions: HTMLInputElement;
  readonly announce: HTMLInputElement;
  readonly close: HTMLButtonElement;
  readonly spoken: HTMLElement;
  /** What is said before the player's other words are there. */
  readonly firstWords: Readonly<Record<"loading" | "notLoaded" | "notDrawn", string>>;
}

/** @throws Error when the page lacks one: page and script are not of one build. */
export function partsOf(root: HTMLElement): Parts {
  const find = <Kind extends HTMLElement>(name: string, kind: new () => Kind): Kind => {
    const found = root.querySelector(`[data-film-${name}]`);
    if (!(found instanceof kind)) throw new Error(`The player has no [data-film-${name}].`);
    return found;
  };
  const word = (name: string): string => root.dataset[name] ?? "";
  return {
    root,
    start: find("start", HTMLButtonElement),
    status: find("status", HTMLElement),
    player: find("player", HTMLElement),
    view: find("view", HTMLElement),
    chapter: find("chapter", HTMLElement),
    caption: find("caption", HTMLElement),
    place: find("place", HTMLInputElement),
    time: find("time", HTMLElement),
    toggle: find("toggle", HTMLButtonElement),
    previous: find("previous", HTMLButtonElement),
    next: find("next", HTMLButtonElement),
    speed: find("speed", HTMLSelectElement),
    captions: find("captions", HTMLInputElement),
    announce: find("announce", HTMLInputElement),
    close: find("close", HTMLButtonElement),
    spoken: find("spoken", HTMLElement),
    firstWords: { loading: word("loading"), notLoaded: word("notLoaded"), notDrawn: word("notDrawn") },
  };
}
