import { type Rule } from "../rule.ts";

export const noticePast: Rule = {
  name: "notice-past",
  severity: "note",
  about: "A notice's last day has passed.",
  run: ({ measured: { course }, today }) =>
    [...course.notices, ...course.holes.flatMap(({ notices }) => notices)].flatMap(({ until, text, place }) =>
      until >= today
        ? []
        : [
            {
              place,
              message: `The notice ${JSON.stringify(text)} ended on ${until} and is shown no more. Remove it, or write new dates.`,
            },
          ],
    ),
};
