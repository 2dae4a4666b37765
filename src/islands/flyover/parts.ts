/** The player's elements, which the page brings (src/components/FilmPlayer.astro). */
import * as attr from "../../contract/attributes.ts";

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
    const found = root.querySelector(`[${name}]`);
    if (!(found instanceof kind)) throw new Error(`The player has no [${name}].`);
    return found;
  };
  const word = (name: string): string => root.getAttribute(name) ?? "";
  return {
    root,
    start: find(attr.filmStart, HTMLButtonElement),
    status: find(attr.filmStatus, HTMLElement),
    player: find(attr.filmPlayer, HTMLElement),
    view: find(attr.filmView, HTMLElement),
    chapter: find(attr.filmChapter, HTMLElement),
    caption: find(attr.filmCaption, HTMLElement),
    place: find(attr.filmPlace, HTMLInputElement),
    time: find(attr.filmTime, HTMLElement),
    toggle: find(attr.filmToggle, HTMLButtonElement),
    previous: find(attr.filmPrevious, HTMLButtonElement),
    next: find(attr.filmNext, HTMLButtonElement),
    speed: find(attr.filmSpeed, HTMLSelectElement),
    captions: find(attr.filmCaptions, HTMLInputElement),
    announce: find(attr.filmAnnounce, HTMLInputElement),
    close: find(attr.filmClose, HTMLButtonElement),
    spoken: find(attr.filmSpoken, HTMLElement),
    firstWords: { loading: word(attr.loading), notLoaded: word(attr.notLoaded), notDrawn: word(attr.notDrawn) },
  };
}
