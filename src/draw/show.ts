/**
 * Which figures of a drawing show. Every group that depends on a tee set or a unit carries
 * `data-tee` or `data-unit`; hidden ones have `display="none"`, so the choice needs no
 * stylesheet and survives printing.
 */

/** Shows a tee set's and a unit's figures in a drawing (or in all drawings below an element). */
export function showFigures(root: ParentNode, tee: string, unit: string): void {
  for (const group of root.querySelectorAll(".plate-tee, .plate-unit")) {
    const shown = matches(group, "data-tee", tee) && matches(group, "data-unit", unit);
    if (shown) group.removeAttribute("display");
    else group.setAttribute("display", "none");
  }
}

const matches = (group: Element, name: string, value: string): boolean => {
  const own = group.getAttribute(name);
  return own === null || own === value;
};
