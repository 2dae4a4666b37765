/**
 * Which third of the green the hole is cut in today, chosen by the golfer: the figure in the
 * middle of the glance's green becomes that third's. The table of shots follows in conditions-third.ts.
 */

export type Third = "front" | "middle" | "back";

export const isThird = (value: string | null | undefined): value is Third => value === "front" || value === "middle" || value === "back";

/**
 * Metres from the tee to the middle of a third of the green, on the line of approach.
 *
 * @param edges front, middle and back of the green from the tee; the middle third's is the green's own middle
 */
export function thirdMetres(third: Third, { front, middle, back }: Readonly<Record<Third, number>>): number {
  if (third === "middle") return middle;
  return front + (back - front) * (third === "front" ? 1 / 6 : 5 / 6);
}

/** What an element held when the page was built. */
const built = new WeakMap<Element, string>();

const builtOf = (element: Element, now: string): string => {
  const known = built.get(element) ?? now;
  built.set(element, known);
  return known;
};

/** Writes the third's metres and name into every glance; whoever calls writes the figures anew. */
export function turnThird(root: ParentNode, third: Third, name: string): void {
  for (const green of root.querySelectorAll(".glance .greens")) {
    const figures = [...green.querySelectorAll(".figure")];
    const [front, middle, back] = figures.map((figure) => Number(builtOf(figure, figure.getAttribute("data-metres") ?? "")));
    const label = green.querySelector(".mid dt");
    if (front === undefined || middle === undefined || back === undefined || label === null) continue;
    const own = builtOf(label, label.textContent);
    figures[1]!.setAttribute("data-metres", `${thirdMetres(third, { front, middle, back })}`);
    label.textContent = third === "middle" ? own : name;
  }
}
