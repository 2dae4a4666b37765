/** The dial and its fields, and what they make of the page. Fetched with the flight code. */
import * as attr from "../contract/attributes.ts";
import type { DayConditions } from "../flight/effective.ts";
import type { Wind } from "../flight/wind.ts";
import { fromUnit, inUnit } from "../geo/units.ts";
import { DialView } from "./conditions-dial-view.ts";
import { compassPoint, dayOf, driveOf, isWind, limitsOf, readField, speedFrom, speedIn, STATED_TEMPERATURE_CELSIUS, todayOf } from "./conditions-model.ts";
import { drivenMetres, golferOf, isUnmeasuredDriver } from "./driven.ts";
import { OwnFigures } from "./conditions-own.ts";
import { CONDITIONS_EVENT, CONDITIONS_KEY, LENGTHS_KEY, NO_CONDITIONS, readConditions, writeConditions, type Conditions } from "./conditions-store.ts";
import { showThird } from "./conditions-third.ts";
import { showToday, type Shown } from "./conditions-today.ts";
import { isTrustedWind } from "../flight/indication.ts";
import { currentSettings, SETTINGS_EVENT, type PageSettings } from "./settings.ts";
import { store, stored } from "./settings-store.ts";
import { knownRungs, ladderOf, type OwnLengths } from "../measure/ladder.ts";
import { GroundFile } from "./ground-file.ts";
import type { ConditionsField } from "../contract/dataset.ts";
import { shotOf } from "../contract/values.ts";
import { islandWords } from "./island-words.ts";
import type { LengthsPanel } from "./lengths-panel.ts";
import { readLengths, writeLengths } from "./lengths-store.ts";
import { showOwnArc } from "./own-plate.ts";
import { OwnShots } from "./own-shots.ts";
import { isPlain, PLAIN_EVENT } from "./plain.ts";

/** @throws when the words of the page cannot be fetched */
export async function startPanel(panel: HTMLDetailsElement): Promise<void> {
  const spoken = await islandWords();
  const { conditions: words, lengths: lengthsWords, units: unitWords, thirds } = spoken;
  const bearing = Number(panel.getAttribute(attr.bearing));
  const heightMetres = Number(panel.getAttribute(attr.height));
  const find = <E extends Element>(selector: string): E => {
    const found = panel.querySelector<E>(selector);
    if (found === null) throw new Error(`The wind's control has no ${selector}.`);
    return found;
  };
  // Without heights there is neither dial nor weather: lengths alone, as on the level in still air.
  const drawing = panel.querySelector<SVGSVGElement>(`[${attr.dial}]`);
  const level = drawing === null;
  const dial = drawing === null ? undefined : new DialView(drawing, bearing, {
    units: () => settings.units,
    wind: () => conditions.wind,
    change: (wind) => change({ wind }),
  });
  const now = find<HTMLElement>(`[${attr.conditionsNow}]`);
  const inputs = new Map<ConditionsField, HTMLInputElement>();
  for (const input of panel.querySelectorAll<HTMLInputElement>(`input[${attr.field}]`)) inputs.set(input.getAttribute(attr.field) as ConditionsField, input);
  const notes = new Map([...inputs.keys()].map((field) => [field, find<HTMLElement>(`[${attr.note}="${field}"]`)]));
  const hints = new Map([...notes].map(([field, note]) => [field, note.textContent ?? ""]));
  const own = new OwnFigures(spoken);
  const ownShots = new OwnShots(lengthsWords, unitWords);
  const ground = new GroundFile(() => compute(), () => {
    now.textContent = words.failed;
  });
  let ladder: LengthsPanel | undefined;

  let settings: PageSettings = currentSettings() ?? { tee: "", units: "yards", third: "middle" };
  let conditions: Conditions = readConditions(stored(CONDITIONS_KEY), Date.now());
  let lengths: OwnLengths = readLengths(stored(LENGTHS_KEY));

  const names: Readonly<Record<ConditionsField, string>> = { speed: words.windSpeed, from: words.windFrom, temperature: words.temperature, carry: words.carry };

  const unitOf = (field: ConditionsField): string => {
    const shown = inputs.get(field)?.nextElementSibling?.textContent ?? "";
    return field === "from" ? words.degreesUnit : shown;
  };

  const hintOf = (field: ConditionsField): string =>
    field === "carry" && conditions.carryMetres !== undefined && isUnmeasuredDriver(conditions.carryMetres) ? words.unmeasuredDriver : hints.get(field) ?? "";

  function refuse(field: ConditionsField, reason: "not-a-number" | "outside" | undefined): void {
    const [input, note] = [inputs.get(field), notes.get(field)];
    if (!input || !note) return;
    input.setAttribute("aria-invalid", String(reason !== undefined));
    note.classList.toggle("refused", reason !== undefined);
    const { least, most } = limitsOf(field, settings.units);
    note.textContent = reason === undefined
      ? hintOf(field)
      : (reason === "outside" ? words.outside : words.notANumber)({ name: names[field], least: String(least).replace("-", "\u2212"), most, unit: unitOf(field) });
  }

  /** Writes the fields from the conditions, but not into the one being typed in. */
  function fill(except?: ConditionsField): void {
    const { wind, temperatureCelsius, carryMetres } = conditions;
    const texts: Readonly<Record<ConditionsField, number | undefined>> = {
      speed: wind && Math.round(speedIn(wind.speedMetresPerSecond, settings.units)),
      from: wind && Math.round(wind.fromDegrees) % 360,
      temperature: temperatureCelsius,
      carry: carryMetres === undefined ? undefined : Math.round(inUnit(carryMetres, settings.units)),
    };
    for (const [field, input] of inputs) {
      if (field === except) continue;
      input.value = texts[field] === undefined ? "" : String(texts[field]);
      refuse(field, undefined);
    }
    dial?.show(wind, windText(wind));
  }

  const windText = (wind: Wind | undefined): string => {
    if (!isWind(wind)) return words.still;
    return words.windNow({
      speed: Math.round(speedIn(wind.speedMetresPerSecond, settings.units)),
      unit: unitOf("speed"),
      from: words.compassPoints[compassPoint(wind.fromDegrees)],
    });
  };

  function shownDay(): Shown | undefined {
    const { wind, temperatureCelsius } = conditions;
    if (level || (!isWind(wind) && temperatureCelsius === undefined)) return undefined;
    const answer = dayOf(conditions, heightMetres);
    return answer.ok ? { day: answer.day } : undefined;
  }

  function still(): DayConditions | undefined {
    const answer = dayOf(NO_CONDITIONS, heightMetres);
    return answer.ok ? answer.day : undefined;
  }

  function compute(): void {
    const table = document.querySelector<HTMLTableElement>(`table[${attr.plays}="${CSS.escape(settings.tee)}"]`);
    const calm = still();
    if (calm === undefined) return;
    const shown = shownDay();
    const { carryMetres } = conditions;
    const rungs = ladderOf(carryMetres, lengths);
    const known = knownRungs(rungs);
    const data = known.length > 0 ? ground.now() : undefined;
    const day = shown?.day ?? calm;
    const driverMetres = golferOf(carryMetres);
    // With plain figures nothing of wind, air and rise may show: a drive is then what the golfer says it is.
    const carriesMetres = data && carryMetres !== undefined
      ? drivenMetres(data, settings.tee, { fromMetres: 0, levelMetres: carryMetres, driverMetres }, level || isPlain() ? undefined : day)
      : undefined;
    const drive = data && carriesMetres !== undefined ? driveOf(data, settings.tee, carriesMetres) : undefined;
    own.show(table, drive, carryMetres, settings, calm);
    const from = data?.from[settings.tee];
    ownShots.show(from && { from, drive, driverMetres, third: settings.third }, known, settings, day, level);
    showOwnArc(from && data && { from, corridorMetres: data.corridorMetres, carryMetres: carriesMetres }, settings.units, lengthsWords, unitWords);
    ladder?.show(rungs, settings.units, shown && { day: shown.day, bearingDegrees: bearing });
    if (table === null) return;
    showThird(table, settings.third, thirds[settings.third], calm, settings.units, words);
    showToday(table, shown, calm, driverMetres, settings.units, words);
    const air = words.now({ wind: windText(conditions.wind), temperature: conditions.temperatureCelsius ?? STATED_TEMPERATURE_CELSIUS });
    const said = `${air} ${middleText(table, day)}${isTrustedWind(day.wind) ? "" : ` ${words.strongWind}`}`;
    if (now.textContent !== said) now.textContent = said;
  }

  /** To the third of the green the hole is cut in, after the golfer's own drive where one is given. */
  function middleText(table: HTMLTableElement, day: DayConditions): string {
    const rows = [...table.querySelectorAll(`[${attr.middle}][${attr.shot}]`)].filter((row) => row.closest("[hidden]") === null);
    const row = rows[rows.length - 1];
    const shot = shotOf(row?.getAttribute(attr.shot));
    const answer = shot && todayOf(shot, day, golferOf(conditions.carryMetres));
    if (!shot || !answer?.ok) return "";
    const whole = (metres: number): string => String(Math.round(inUnit(metres, settings.units)));
    const figures = { distance: whole(shot[0]), length: whole(answer.lengthMetres) };
    return row?.hasAttribute(attr.thirdRow) ? words.thirdNow({ ...figures, third: thirds[settings.third] }) : words.middleNow(figures);
  }

  let waiting = 0;
  /** Once for a frame, however many moves the pointer makes in it. */
  function changed(except?: ConditionsField): void {
    store(CONDITIONS_KEY, writeConditions(conditions, Date.now()));
    fill(except);
    cancelAnimationFrame(waiting);
    waiting = requestAnimationFrame(compute);
    document.dispatchEvent(new Event(CONDITIONS_EVENT));
  }

  const change = (part: Partial<Conditions>, except?: ConditionsField): void => {
    conditions = { ...conditions, ...part };
    changed(except);
  };

  function typed(field: ConditionsField, text: string): void {
    const reading = readField(text, field, settings.units);
    refuse(field, reading.ok ? undefined : reading.reason);
    if (!reading.ok) return;
    const { value } = reading;
    const { wind } = conditions;
    switch (field) {
      case "speed":
        return change({ wind: value === undefined ? undefined : { speedMetresPerSecond: speedFrom(value, settings.units), fromDegrees: wind?.fromDegrees ?? bearing } }, field);
      case "from":
        return value === undefined ? undefined : change({ wind: { speedMetresPerSecond: wind?.speedMetresPerSecond ?? 0, fromDegrees: value % 360 } }, field);
      case "temperature":
        return change({ temperatureCelsius: value }, field);
      case "carry":
        change({ carryMetres: value === undefined ? undefined : fromUnit(value, settings.units) }, field);
        // Its hint is the driver's, which has just changed.
        return refuse(field, undefined);
    }
  }
  for (const [field, input] of inputs) {
    input.addEventListener("input", () => typed(field, input.value));
    // Leaving a field whole numbers are shown in, its own value is not rewritten while it is refused.
    input.addEventListener("change", () => {
      if (input.getAttribute("aria-invalid") !== "true") fill();
    });
  }
  find("form").addEventListener("submit", (event) => event.preventDefault());
  find("form").addEventListener("reset", (event) => {
    event.preventDefault();
    change({ wind: undefined, temperatureCelsius: undefined });
  });

  document.addEventListener(SETTINGS_EVENT, (event) => {
    settings = (event as CustomEvent<PageSettings>).detail;
    fill();
    compute();
  });
  document.addEventListener(PLAIN_EVENT, () => compute());
  window.addEventListener("storage", ({ key, newValue }) => {
    if (key === CONDITIONS_KEY) conditions = readConditions(newValue, Date.now());
    else if (key === LENGTHS_KEY) lengths = readLengths(newValue);
    else return;
    fill();
    compute();
  });
  const lengthsPlace = find<HTMLDetailsElement>(`[${attr.lengths}]`);
  const openLadder = (): void => {
    if (ladder !== undefined || !lengthsPlace.open) return;
    void import("./lengths-panel.ts").then(({ LengthsPanel }) => {
      ladder ??= new LengthsPanel(lengthsPlace, words, lengthsWords, unitWords, () => lengths, (next) => {
        lengths = next;
        store(LENGTHS_KEY, writeLengths(lengths));
        changed();
      });
      compute();
    }).catch(() => {
      now.textContent = words.failed;
    });
  };
  lengthsPlace.addEventListener("toggle", openLadder);
  openLadder();
  fill();
  compute();
  // The first wind would be worked out by code the browser has not made fast yet; a golfer dragging the mark would feel it.
  const warm = (): void => {
    const table = document.querySelector<HTMLTableElement>(`table[${attr.plays}="${CSS.escape(settings.tee)}"]`);
    const rehearsal = dayOf({ ...NO_CONDITIONS, wind: { speedMetresPerSecond: 6, fromDegrees: bearing + 50 } }, heightMetres);
    if (table !== null && rehearsal.ok) for (const row of table.querySelectorAll(`[${attr.shot}]`)) {
      const shot = shotOf(row.getAttribute(attr.shot));
      if (shot !== undefined) todayOf(shot, rehearsal.day);
    }
  };
  if ("requestIdleCallback" in window) window.requestIdleCallback(warm);
  else setTimeout(warm, 200);
}
