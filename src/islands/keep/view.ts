/** The control that keeps the guide on a device: a line, a bar while it comes, and what can be done. */

export interface Action {
  readonly text: string;
  readonly strong?: boolean;
  readonly act: () => void;
}

export interface View {
  readonly line: string;
  /** Share that is here, 0 to 1, while it is coming. */
  readonly share?: number;
  readonly actions: readonly Action[];
}

/** Shows a view in a place; the line is spoken when it says something new. */
export function showView(place: HTMLElement, { line, share, actions }: View): void {
  const said = place.querySelector<HTMLElement>("[role=status]") ?? made(place, "p", { role: "status" });
  const bar = place.querySelector("progress") ?? made(place, "progress", { max: "1" });
  const row = place.querySelector<HTMLElement>(".keep-actions") ?? made(place, "p", { class: "keep-actions" });
  said.textContent = line;
  // A count that changes ten times a second is for the eye.
  said.setAttribute("aria-live", share === undefined ? "polite" : "off");
  bar.hidden = share === undefined;
  if (share !== undefined) bar.value = share;
  bar.setAttribute("aria-label", line);
  place.hidden = false;
  const before = [...row.children].map(({ textContent }) => textContent);
  if (before.length === actions.length && actions.every(({ text }, i) => text === before[i])) return;
  const held = row.contains(document.activeElement);
  row.replaceChildren(
    ...actions.map(({ text, strong, act }) => {
      const button = document.createElement("button");
      button.type = "button";
      button.className = strong ? "button strong" : "button";
      button.textContent = text;
      button.addEventListener("click", act);
      return button;
    }),
  );
  // The keyboard stays where it was when its button turns into another.
  if (held) row.querySelector("button")?.focus({ preventScroll: true });
}

function made<Tag extends "p" | "progress">(
  place: HTMLElement,
  tag: Tag,
  attributes: Readonly<Record<string, string>>,
): HTMLElementTagNameMap[Tag] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  place.append(element);
  return element;
}
