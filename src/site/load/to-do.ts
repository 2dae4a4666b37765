/** What is left to do in a content folder, from its files. */
import { toDoList, type ToDo } from "../../check/to-do.ts";
import { yardsFromMetres } from "../../geo/units.ts";
import { loadChecked } from "./checked.ts";
import { shownFolder } from "../build/integration.ts";

/** @param shown the folder as commands in the list name it */
export async function toDoOf(content: string, shown = shownFolder(content)): Promise<ToDo[]> {
  const { sound, measured, diagnostics } = await loadChecked(content);
  const lengths = new Map(
    measured.flatMap(({ course, holes }) =>
      holes.map(
        ({ hole, tees }) =>
          [
            `${course.id}/${hole.number}`,
            Object.fromEntries(
              tees.map(({ tee, lengthMetres }) => [tee.id, Math.round(yardsFromMetres(lengthMetres))]),
            ),
          ] as const,
      ),
    ),
  );
  return toDoList(sound, diagnostics, shown, lengths);
}
