/**
 * What is left until a guide can be published, as a list to work off: mistakes, shapes and
 * figures that stand for the club's own, proposals to confirm, texts nobody has written,
 * sources without a licence. Pure. The check's remarks come last, as one point.
 */
import type { Diagnostic } from "../course/diagnostic.ts";
import { draftOf, PLACEHOLDER_DESCRIPTION, unnamedSources, type HoleDraft } from "../course/draft.ts";
import { numbersIn } from "../course/schema/wording.ts";
import type { Course, Hole, MarkedField } from "../course/types.ts";

export interface ToDo {
  /** What is missing, in a sentence. */
  readonly what: string;
  /** The command or the line that does it. */
  readonly how: string;
}

interface Drafted {
  readonly hole: Hole;
  readonly draft: HoleDraft;
}

/** `Hole 3`, `Holes 3, 4 and 9 to 18`. */
const holesOf = (some: readonly Drafted[]): string =>
  `${some.length === 1 ? "Hole" : "Holes"} ${numbersIn(some.map(({ hole }) => hole.number))}`;

/** Pages by name, or where there are many the folder they are in. */
const pagesOf = (course: Course, holes: readonly Hole[]): string =>
  holes.length <= 3
    ? holes.map(({ slug }) => `${course.id}/holes/${slug}.md`).join(", ")
    : `${course.id}/holes/, the pages of holes ${numbersIn(holes.map(({ number }) => number))}`;

const FIELD_WORDS: Readonly<Record<MarkedField, string>> = {
  par: "par",
  strokeIndex: "stroke index",
  card: "printed card",
};

/**
 * @param courses those that could be read, with those of their holes that are in order
 * @param folder the content folder as a command names it
 * @param lengths by course and hole: yards measured from each tee set's marker, for the forms to fill in
 */
export function toDoList(
  courses: readonly Course[],
  diagnostics: readonly Diagnostic[],
  folder: string,
  lengths: ReadonlyMap<string, Readonly<Record<string, number>>> = new Map(),
): ToDo[] {
  const errors = diagnostics.filter(({ severity }) => severity === "error");
  const list: ToDo[] = errors.map(({ file, line, message }) => ({ what: message, how: `${file}, line ${line}` }));
  for (const course of courses) list.push(...courseToDo(course, folder, lengths));
  const remarks = diagnostics.filter(({ severity, rule }) => severity !== "error" && !SAID_ABOVE.has(rule)).length;
  if (remarks > 0)
    list.push({
      what: `The check has ${remarks} remark${remarks === 1 ? "" : "s"}: mend each, or silence it with a reason.`,
      how: `npm run check -- --content ${folder}`,
    });
  return list;
}

/** Rules that this list tells in its own words. */
const SAID_ABOVE: ReadonlySet<string> = new Set(["draft", "source-licence", "tip-empty"]);

function courseToDo(
  course: Course,
  folder: string,
  lengths: ReadonlyMap<string, Readonly<Record<string, number>>>,
): ToDo[] {
  const list: ToDo[] = [];
  const drafted = course.holes.flatMap((hole): Drafted[] => {
    const draft = draftOf(hole);
    return draft === undefined ? [] : [{ hole, draft }];
  });
  const pick = (has: (draft: HoleDraft) => boolean): Drafted[] => drafted.filter(({ draft }) => has(draft));
  const bring = `npm run bring -- --content ${folder} --course ${course.id}`;
  const page = ({ slug }: Hole): string => `${course.id}/holes/${slug}.md`;
  const shapes = pick((draft) => draft.shapes.some(({ kind }) => kind === "line-of-play"));
  if (shapes.length > 0)
    list.push({
      what: `${holesOf(shapes)}: all shapes are placeholders. Bring a tracing or a survey.`,
      how: `${bring} FILE --write`,
    });
  for (const { hole, draft } of pick(
    ({ shapes: own }) => own.length > 0 && !own.some(({ kind }) => kind === "line-of-play"),
  )) {
    list.push({
      what: `Hole ${hole.number}: ${draft.shapes.map(({ id }) => id).join(", ")} ${draft.shapes.length === 1 ? "is a placeholder" : "are placeholders"}. Bring ${draft.shapes.length === 1 ? "it" : "them"}, or draw over and take placeholder: true away.`,
      how: page(hole),
    });
  }
  const walked = pick((draft) => draft.proposed.some(({ kind }) => kind === "line-of-play"));
  if (walked.length > 0)
    list.push({
      what: `${holesOf(walked)}: the number or the line itself was worked out. Look at each on its page; a wrong number is changed in hole: and in the file's name.`,
      how: `${bring} --confirm lines --write`,
    });
  const markers = pick((draft) => draft.proposed.some(({ kind }) => kind === "tee-marker"));
  const markerCount = markers.reduce(
    (sum, { draft }) => sum + draft.proposed.filter(({ kind }) => kind === "tee-marker").length,
    0,
  );
  if (markers.length > 0)
    list.push({
      what: `${holesOf(markers)}: ${markerCount} tee marker${markerCount === 1 ? " was" : "s were"} proposed on tee grounds. Look at each, move what is wrong, then confirm.`,
      how: `${bring} --confirm markers --write`,
    });
  for (const field of ["par", "strokeIndex"] as const) {
    const open = pick((draft) => draft.placeholderFields.includes(field));
    if (open.length > 0)
      list.push({
        what: `${holesOf(open)}: the ${FIELD_WORDS[field]} is a placeholder. Write ${field}: ___ and take ${field} out of placeholder.`,
        how: pagesOf(
          course,
          open.map(({ hole }) => hole),
        ),
      });
  }
  for (const { hole } of pick((draft) => draft.placeholderFields.includes("card"))) {
    const measured = lengths.get(`${course.id}/${hole.number}`) ?? {};
    const form = Object.keys(hole.cardMetres)
      .map((tee) => `${tee}: ___`)
      .join(", ");
    const ground = Object.entries(measured)
      .map(([tee, yards]) => `${tee} ${yards}`)
      .join(", ");
    const real = !shapes.some((one) => one.hole === hole);
    list.push({
      what: `Hole ${hole.number}: the card is a placeholder. Write card: { ${form} }${real && ground !== "" ? ` (measured on the ground: ${ground})` : ""} and take card out of placeholder.`,
      how: real ? `${page(hole)}, or ${bring} FILE --card-from-ground --write` : page(hole),
    });
  }
  const par = pick((draft) => draft.proposedFields.includes("par"));
  if (par.length > 0)
    list.push({
      what: `${holesOf(par)}: par was proposed from the measured length. Correct what is wrong, then confirm.`,
      how: `${bring} --confirm par --write`,
    });
  const card = pick((draft) => draft.proposedFields.includes("card"));
  if (card.length > 0)
    list.push({
      what: `${holesOf(card)}: the card shows measured lengths, not the printed ones. Correct what differs, then confirm.`,
      how: `${bring} --confirm card --write`,
    });
  const tips = course.holes.filter((hole) => hole.tip.markdown === "" || draftOf(hole)?.tip === true);
  if (tips.length > 0)
    list.push({
      what: `${tips.length} tip${tips.length === 1 ? " is" : "s are"} not written yet. Write how each hole is played, below the second line ---.`,
      how: pagesOf(course, tips),
    });
  if (course.description === PLACEHOLDER_DESCRIPTION || course.description === "")
    list.push({
      what: `${course.name} has no description yet. Write description: and what a visitor should know.`,
      how: `${course.id}/course.yaml`,
    });
  const unnamed = unnamedSources(course);
  if (unnamed.length > 0)
    list.push({
      what: `Nobody has said where ${unnamed.join(", ")} ${unnamed.length === 1 ? "comes" : "come"} from, and under what licence. Write text and licence in sources.`,
      how: `${course.id}/course.yaml: - { text: "___", licence: "___", files: [ ${unnamed.map((file) => JSON.stringify(file)).join(", ")} ] }`,
    });
  return list;
}

/** The list, numbered, each with its command or line below. */
export function toDoLines(list: readonly ToDo[]): string[] {
  if (list.length === 0) return ["Nothing is left to do: the guide can be published."];
  return list.flatMap(({ what, how }, i) => [`${String(i + 1).padStart(3)}. ${what}`, `     ${how}`]);
}
