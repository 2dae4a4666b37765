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
  readonly words: {
    readonly play: string;
    readonly pause: string;
    readonly loading: string;
    placeIs(time: string, length: string, chapter: string): string;
    failed(failure: "data" | "webgl" | "lost"): string;
  };
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
    words: {
      play: word("play"),
      pause: word("pause"),
      loading: word("loading"),
      placeIs: (time, length, chapter) => word("place").replace("{time}", time).replace("{length}", length).replace("{chapter}", chapter),
      failed: (failure) => word({ data: "failedData", webgl: "failedWebgl", lost: "failedLost" }[failure]),
    },
  };
}
