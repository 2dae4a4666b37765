/** The dial on the page: dragged, turned by keys, and drawn as the wind stands. */
import * as attr from "../contract/attributes.ts";
import type { LengthUnit } from "../geo/units.ts";
import type { Wind } from "../flight/wind.ts";
import { keyTurn, placeOf, turnedBy, windAt } from "./conditions-dial.ts";
import { speedFrom, speedIn } from "./conditions-model.ts";

const DIAL_RADIUS = 104;

export interface DialCalls {
  readonly units: () => LengthUnit;
  readonly wind: () => Wind | undefined;
  readonly change: (wind: Wind | undefined) => void;
}

export class DialView {
  private readonly bearing: number;
  private readonly mark: SVGGElement;
  private readonly arrow: SVGGElement;
  private readonly head: SVGElement;

  /**
   * @param bearing the hole's, which runs up the dial
   * @throws when the drawing lacks a part
   */
  constructor(dial: SVGSVGElement, bearing: number, { units, wind, change }: DialCalls) {
    const part = <E extends SVGElement>(selector: string): E => {
      const found = dial.querySelector<E>(selector);
      if (found === null) throw new Error(`The wind's dial has no ${selector}.`);
      return found;
    };
    this.bearing = bearing;
    this.mark = part(`[${attr.dialMark}]`);
    this.arrow = part(`[${attr.windArrow}]`);
    this.head = part(`[${attr.windHead}]`);
    const drag = ({ clientX, clientY }: PointerEvent): void => {
      const box = dial.getBoundingClientRect();
      const scale = (box.width / 224) * DIAL_RADIUS;
      const there = windAt(
        (clientX - (box.left + box.width / 2)) / scale,
        (clientY - (box.top + box.height / 2)) / scale,
        bearing,
      );
      // Whole units and five degrees: a finger is no finer.
      const speed = speedFrom(Math.round(speedIn(there.speedMetresPerSecond, units())), units());
      change(
        speed === 0
          ? undefined
          : { speedMetresPerSecond: speed, fromDegrees: (Math.round(there.fromDegrees / 5) * 5) % 360 },
      );
    };
    dial.addEventListener("pointerdown", (event) => {
      event.preventDefault();
      dial.setPointerCapture(event.pointerId);
      this.mark.focus({ preventScroll: true });
      drag(event);
    });
    dial.addEventListener("pointermove", (event) => {
      if (dial.hasPointerCapture(event.pointerId)) drag(event);
    });
    this.mark.addEventListener("keydown", (event) => {
      const turn = keyTurn(event.key);
      if (turn === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      change(turnedBy(wind() ?? { speedMetresPerSecond: speedFrom(5, units()), fromDegrees: bearing }, turn));
    });
  }

  /** @param text the wind in words */
  show(wind: Wind | undefined, text: string): void {
    const shown: Wind = wind ?? { speedMetresPerSecond: 0, fromDegrees: this.bearing };
    const [x, y] = placeOf(shown, this.bearing).map((share) => share * DIAL_RADIUS) as [number, number];
    this.mark.setAttribute("transform", `translate(${x.toFixed(1)} ${y.toFixed(1)})`);
    this.mark.setAttribute("aria-valuenow", String(Math.round(shown.fromDegrees) % 360));
    this.mark.setAttribute("aria-valuetext", text);
    const length = Math.hypot(x, y);
    // Shorter than the mark itself there is nothing to see of it.
    if (length > 16) this.arrow.removeAttribute("display");
    else this.arrow.setAttribute("display", "none");
    const [ux, uy] = [x / (length || 1), y / (length || 1)];
    for (const shaft of this.arrow.querySelectorAll(`[${attr.windShaft}]`))
      shaft.setAttribute(
        "d",
        `M${(x - ux * 10).toFixed(1)} ${(y - uy * 10).toFixed(1)}L${(ux * 9).toFixed(1)} ${(uy * 9).toFixed(1)}`,
      );
    this.head.setAttribute(
      "transform",
      `translate(${(ux * -1).toFixed(1)} ${(uy * -1).toFixed(1)}) rotate(${((Math.atan2(ux, -uy) * 180) / Math.PI).toFixed(1)})`,
    );
  }
}
