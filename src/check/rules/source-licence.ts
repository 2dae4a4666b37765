import { unnamedSources } from "../../course/draft.ts";
import { at, coursePlace, type Rule } from "../rule.ts";

export const sourceLicence: Rule = {
  name: "source-licence",
  severity: "warning",
  about: "Brought data lacks its source or its licence: the guide is not built, unless as a draft.",
  run: ({ measured }) => {
    const { course } = measured;
    return unnamedSources(course).map((file) => {
      const place = course.credits.find(({ files }) => files.includes(file))?.place ?? coursePlace(measured);
      return at(
        place,
        `${file} has no source or no licence: whoever made it may ask to be named. Write - { text: "___", licence: "___", files: [ ${JSON.stringify(file)} ] } in sources.`,
      );
    });
  },
};
