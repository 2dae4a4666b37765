/** Writes what the golfer's full shots do on the hole, from the tee shown and in the day's air. */
import * as attr from "../contract/attributes.ts";
import type { DayConditions } from "../flight/effective.ts";
import type { Rounding } from "../geo/units.ts";
import type { KnownRung } from "../measure/ladder.ts";
import { formatLength } from "../tell/format.ts";
import type { IslandWords } from "../words/island-words.ts";
import type { UnitWords } from "../words/words.ts";
import { ownShots, type OwnHole, type ShotAnswer } from "./own-shots-model.ts";
import type { PageSettings } from "./settings.ts";

/** What is asked, the shot that answers it, and by how much. */
interface Told {
  readonly asked: string;
  readonly shot: string;
  readonly note: string;
}

export class OwnShots {
  private readonly words: IslandWords["lengths"];
  private readonly units: UnitWords;

  constructor(words: IslandWords["lengths"], units: UnitWords) {
    this.words = words;
    this.units = units;
  }

  /**
   * @param hole undefined where nothing is known of it yet, or no length is given
   * @param level whether the guide has no heights
   */
  show(
    hole: OwnHole | undefined,
    rungs: readonly KnownRung[],
    settings: PageSettings,
    day: DayConditions,
    level: boolean,
  ): void {
    const block = document.querySelector<HTMLElement>(`[${attr.ownShots}]`);
    if (block === null) return;
    const told = hole === undefined ? [] : ownShots(hole, rungs, day).map((answer) => this.told(answer, settings));
    block.toggleAttribute("hidden", told.length === 0);
    if (told.length === 0) return;
    const made = <K extends keyof HTMLElementTagNameMap>(
      tag: K,
      text: string,
      ...children: readonly Node[]
    ): HTMLElementTagNameMap[K] => {
      const element = document.createElement(tag);
      element.append(text, ...children);
      return element;
    };
    const tee = document.querySelector(`[${attr.teeChoice}="${CSS.escape(settings.tee)}"]`)?.textContent ?? "";
    const list = made(
      "dl",
      "",
      ...told.map(({ asked, shot, note }) =>
        made(
          "div",
          "",
          made("dt", asked),
          made("dd", "", made("b", shot), ...(note === "" ? [] : [made("small", note)])),
        ),
      ),
    );
    const notes = made("p", level ? this.words.noteLevel : this.words.note);
    notes.className = "small soft";
    block.replaceChildren(made("h3", `${this.words.title} `, made("small", this.words.from({ tee }))), list, notes);
  }

  private told(answer: ShotAnswer, { units, third }: PageSettings): Told {
    const say = this.words;
    const length = (metres: number, rounding?: Rounding): string =>
      formatLength(metres, units, this.units, rounding).text;
    switch (answer.kind) {
      case "carry": {
        const asked = say.toCarry({ name: answer.name, length: length(answer.distanceMetres, "up") });
        if (answer.by === undefined) return { asked, shot: say.noneCarries, note: "" };
        const shot = say.shots[answer.by.id];
        return {
          asked,
          shot: answer.longest ? shot : say.orLonger({ shot }),
          note: say.spare({ length: length(answer.spareMetres) }),
        };
      }
      case "short":
        return answer.hazard === undefined
          ? { asked: say.longest({ shot: say.shots[answer.by.id] }), shot: say.endsClear, note: "" }
          : {
              asked: say.toStayShort({
                name: answer.hazard.name,
                length: length(answer.hazard.distanceMetres, "down"),
              }),
              shot: say.shots[answer.by.id],
              note: say.lands({ length: length(answer.gapMetres) }),
            };
      case "green":
      case "part":
      case "beyond": {
        const to = length(answer.distanceMetres);
        const asked =
          answer.driveMetres === undefined
            ? say.toGreen[third]({ length: to })
            : say.afterDrive[third]({ length: to, drive: length(answer.driveMetres) });
        if (answer.kind === "part") return { asked, shot: say.lessThan({ shot: say.shots[answer.by.id] }), note: "" };
        const note =
          answer.kind === "beyond"
            ? say.leaves({ length: length(answer.leavesMetres) })
            : (answer.pastMetres < 0 ? say.short : say.past)({ length: length(Math.abs(answer.pastMetres)) });
        return { asked, shot: say.shots[answer.by.id], note };
      }
    }
  }
}
