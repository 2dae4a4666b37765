/** From a figure as written to its value for every tee set, or to what is wrong with it. */
import { insteadOf } from "../course/schema/wording.ts";
import { isHazard } from "../course/kinds.ts";
import type { LengthUnit, Rounding } from "../geo/units.ts";
import type { MeasuredHole, PlacedFeature } from "../measure/types.ts";
import { FIGURES, type FigureCall, type FigureDefinition, type FigureValue, type Meaning } from "./figures.ts";

export type Answer =
  | {
      readonly type: "length" | "rise";
      /** By tee set; a set from which the figure has no meaning is absent. */
      readonly metres: Readonly<Record<string, number>>;
      /** Carries go up, reaches down. */
      readonly rounding: Rounding;
      readonly meaning: Meaning;
      /** Name of the tee set the tip fixes it to. */
      readonly fixed: string | undefined;
    }
  | { readonly type: "name"; readonly text: string; readonly meaning: Meaning; readonly target: string };

export interface Problem {
  /** One sentence: what is wrong and what to type. */
  readonly problem: string;
}

export interface Asked {
  readonly units: LengthUnit;
  /** Tee set the tip is shown for. */
  readonly tee: string;
}

const problem = (text: string): Problem => ({ problem: text });

function unknown(what: string, written: string, known: readonly string[]): Problem {
  return problem(`no ${what} is called "${written}". ${insteadOf(written, known)}`);
}

/** Checks the options of a call against its definition; undefined when all is well. */
function badOption(call: FigureCall, definition: FigureDefinition, hole: MeasuredHole): Problem | undefined {
  const allowed = ["tee", ...Object.keys(definition.options)];
  for (const [name, value] of Object.entries(call.options)) {
    if (!allowed.includes(name)) return unknown(`option of :${call.name}`, name, allowed);
    if (name === "tee") {
      const tees = hole.tees.map(({ tee }) => tee.id);
      if (!tees.includes(value)) return unknown("tee set of this hole", value, tees);
      continue;
    }
    const kind = definition.options[name]!;
    if (kind === "length" && !(Number(value) > 0 && Number(value) < 1000)) {
      return problem(`${name}=${value} must be a length above 0 and below 1000; write for example ${name}=100`);
    }
    if (kind === "count" && !/^[1-9]$/.test(value))
      return problem(`${name}=${value} must be a number from 1 to 9; write for example ${name}=2`);
    if (Array.isArray(kind) && !kind.includes(value))
      return problem(`${name}=${value} is not known; write ${kind.map((word) => `${name}=${word}`).join(" or ")}`);
  }
  const missing = definition.required.find((name) => call.options[name] === undefined);
  if (missing === undefined) return undefined;
  const example = definition.options[missing] === "length" ? "100" : "green";
  return problem(
    `the option ${missing} is missing; write for example :${call.name}${call.target ? `[${call.target}]` : ""}{${missing}=${example}}`,
  );
}

function featureCalled(id: string, hole: MeasuredHole): PlacedFeature | Problem {
  return hole.placed.get(id) ?? unknown("feature of this hole", id, [...hole.placed.keys()]);
}

/** The value of a figure from every tee set of the hole. */
export function answer(call: FigureCall, hole: MeasuredHole, { units, tee: shown }: Asked): Answer | Problem {
  const definition = Object.hasOwn(FIGURES, call.name) ? FIGURES[call.name] : undefined;
  if (!definition) return unknown("figure", call.name, Object.keys(FIGURES));
  if (definition.target === "feature" && call.target === undefined) {
    const example = [...hole.placed.values()].find(({ feature }) => isHazard(feature.kind))?.feature.id ?? "green";
    return problem(`a feature is missing; write for example :${call.name}[${example}]`);
  }
  if (definition.target === "none" && call.target !== undefined) {
    return problem(`:${call.name} takes no feature; write :${call.name} without [${call.target}]`);
  }
  const wrong = badOption(call, definition, hole);
  if (wrong) return wrong;

  const target = call.target === undefined ? undefined : featureCalled(call.target, hole);
  if (target && "problem" in target) return target;
  const otherId = call.options["to"];
  const other = otherId === undefined ? undefined : featureCalled(otherId, hole);
  if (other && "problem" in other) return other;

  const fixed = call.options["tee"];
  const tees = fixed === undefined ? hole.tees : hole.tees.filter((one) => one.tee.id === fixed);
  const decisive = fixed ?? shown;
  const values = new Map<string, FigureValue>();
  for (const one of tees)
    values.set(one.tee.id, definition.from(one, { hole, units, target, other, options: call.options }));

  const main = values.get(decisive) ?? [...values.values()][0];
  if (!main) return problem("this hole has no tee markers");
  if (main.type === "none") return problem(main.why);
  if (main.type === "name") return { type: "name", text: main.text, meaning: main.meaning, target: call.target! };

  const metres: Record<string, number> = {};
  for (const [id, value] of values) if (value.type === "length" || value.type === "rise") metres[id] = value.metres;
  const rounding = main.type === "length" ? main.rounding : "nearest";
  if (fixed === undefined) return { type: main.type, metres, rounding, meaning: main.meaning, fixed: undefined };
  // A fixed figure is the same whatever tee set the golfer chooses.
  const value = metres[fixed]!;
  return {
    type: main.type,
    metres: Object.fromEntries(hole.tees.map((one) => [one.tee.id, value])),
    rounding,
    meaning: main.meaning,
    fixed: tees[0]!.tee.name,
  };
}
