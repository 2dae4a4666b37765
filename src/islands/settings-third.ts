/**
 * Which third of the green the hole is cut in today, chosen by the golfer: the figure in the
 * middle of the glance's green becomes that third's, and the flags of the drawings stand in it. The table of shots
 * follows in conditions-third.ts.
 */
import * as attr from "../contract/attributes.ts";
import { flagOf } from "../contract/values.ts";
import { thirdMetres, thirdPoint, type Third } from "../measure/third.ts";

export const isThird = (value: string | null | undefined): value is Third =>
  value === "front" || value === "middle" || value === "back";

/** What an element held when the page was built. */
const built = new WeakMap<Element, string>();

const builtOf = (element: Element, now: string): string => {
  const known = built.get(element) ?? now;
  built.set(element, known);
  return known;
};

/**
 * Moves the flags of drawings to the third; where the content gives today's hole, the flag stands in that
 * and stays.
 */
export function turnFlags(root: ParentNode, third: Third): void {
  for (const flag of root.querySelectorAll(`[${attr.flag}]`)) {
    const places = flagOf(flag.getAttribute(attr.flag));
    if (places !== undefined) flag.setAttribute("transform", `translate(${thirdPoint(third, places).join(" ")})`);
  }
}

/**
 * Writes the third's metres and name into every glance, and moves the flags; whoever calls writes the
 * figures anew.
 */
export function turnThird(root: ParentNode, third: Third, name: string): void {
  for (const green of root.querySelectorAll(".glance .greens")) {
    const figures = [...green.querySelectorAll(".figure")];
    const [front, middle, back] = figures.map((figure) =>
      Number(builtOf(figure, figure.getAttribute(attr.metres) ?? "")),
    );
    const label = green.querySelector(".mid dt");
    if (front === undefined || middle === undefined || back === undefined || label === null) continue;
    const own = builtOf(label, label.textContent);
    figures[1]!.setAttribute(attr.metres, `${thirdMetres(third, { front, middle, back })}`);
    label.textContent = third === "middle" ? own : name;
  }
  turnFlags(root, third);
}
