/** Writes what the golfer's full shots do on the hole, from the tee shown and in the day's air. */
import * as attr from "../contract/attributes.ts";
import type { DayConditions } from "../flight/effective.ts";
import type { KnownRung } from "../measure/ladder.ts";
import { formatLength, type UnitWords } from "../tell/format.ts";
import type { LengthsWords } from "./lengths-words.ts";
import { fill } from "./map/words.ts";
import { ownShots, type OwnHole, type ShotAnswer } from "./own-shots-model.ts";
import type { PageSettings } from "./settings.ts";

/** What is asked, the shot that answers it, and by how much. */
interface Told {
  readonly asked: string;
  readonly shot: string;
  readonly note: string;
}

export class OwnShots {
  private readonly words: LengthsWords;
  private readonly units: UnitWords;

  constructor(words: LengthsWords, units: UnitWords) {
    this.words = words;
    this.units = units;
  }

  /**
   * @param hole undefined where nothing is known of it yet, or no length is given
   * @param level whether the guide has no heights
   */
  show(hole: OwnHole | undefined, rungs: readonly KnownRung[], settings: PageSettings, day: DayConditions, level: boolean): void {
    const block = document.querySelector<HTMLElement>(`[${attr.ownShots}]`);
    if (block === null) return;
    const told = hole === undefined ? [] : ownShots(hole, rungs, day).map((answer) => this.told(answer, settings));
    block.toggleAttribute("hidden", told.length === 0);
    if (told.length === 0) return;
    const made = <K extends keyof HTMLElementTagNameMap>(tag: K, text: string, ...children: readonly Node[]): HTMLElementTagNameMap[K] => {
      const element = document.createElement(tag);
      element.append(text, ...children);
      return element;
    };
    const tee = document.querySelector(`[${attr.teeChoice}="${CSS.escape(settings.tee)}"]`)?.textContent ?? "";
    const list = made("dl", "", ...told.map(({ asked, shot, note }) =>
      made("div", "", made("dt", asked), made("dd", "", made("b", shot), ...(note === "" ? [] : [made("small", note)])))));
    const notes = made("p", level ? this.words.noteLevel : this.words.note);
    notes.className = "small soft";
    block.replaceChildren(made("h3", `${this.words.title} `, made("small", fill(this.words.from, { tee }))), list, notes);
  }

  private told(answer: ShotAnswer, { units, third }: PageSettings): Told {
    const say = this.words;
    const length = (metres: number): string => formatLength(metres, units, this.units).text;
    switch (answer.kind) {
      case "carry": {
        const asked = fill(say.toCarry, { name: answer.name, length: length(answer.distanceMetres) });
        if (answer.by === undefined) return { asked, shot: say.noneCarries, note: "" };
        const shot = say.shots[answer.by.id];
        return { asked, shot: answer.longest ? shot : fill(say.orLonger, { shot }), note: fill(say.spare, { length: length(answer.spareMetres) }) };
      }
      case "short":
        return answer.hazard === undefined
          ? { asked: fill(say.longest, { shot: say.shots[answer.by.id] }), shot: say.endsClear, note: "" }
          : {
              asked: fill(say.toStayShort, { name: answer.hazard.name, length: length(answer.hazard.distanceMetres) }),
              shot: say.shots[answer.by.id],
              note: fill(say.lands, { length: length(answer.gapMetres) }),
            };
      case "green":
      case "part":
      case "beyond": {
        const to = length(answer.distanceMetres);
        const asked = answer.driveMetres === undefined ? fill(say.toGreen[third], { length: to }) : fill(say.afterDrive[third], { length: to, drive: length(answer.driveMetres) });
        if (answer.kind === "part") return { asked, shot: fill(say.lessThan, { shot: say.shots[answer.by.id] }), note: "" };
        const note = answer.kind === "beyond"
          ? fill(say.leaves, { length: length(answer.leavesMetres) })
          : fill(answer.pastMetres < 0 ? say.short : say.past, { length: length(Math.abs(answer.pastMetres)) });
        return { asked, shot: say.shots[answer.by.id], note };
      }
    }
  }
}
