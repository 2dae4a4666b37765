/** What Astro is told to make of a guide: each page and file, in each language. */
import type { Club } from "../../course/types.ts";
import type { MeasuredCourse, MeasuredHole } from "../../measure/types.ts";
import { currentGuide } from "../load/guide.ts";
import { guideViews } from "../language/language-view.ts";
import { languageFolder } from "./routes.ts";

export interface CourseProps {
  /** As seen in the page's language. */
  readonly club: Club;
  readonly course: MeasuredCourse;
}

export interface HoleProps extends CourseProps {
  readonly measured: MeasuredHole;
}

/** `de` for pages under `de/`; undefined at the root. */
export const languageParam = (club: Club): string | undefined => languageFolder(club).replace(/\/$/, "") || undefined;

/** Every course in every language. */
export const coursePaths = (): { params: { language: string | undefined; course: string }; props: CourseProps }[] =>
  guideViews(currentGuide()).flatMap(({ club, courses }) =>
    courses.map((course) => ({
      params: { language: languageParam(club), course: course.course.id },
      props: { club, course },
    })),
  );

/** Every hole in every language. */
export const holePaths = (): {
  params: { language: string | undefined; course: string; hole: string };
  props: HoleProps;
}[] =>
  coursePaths().flatMap(({ params, props }) =>
    props.course.holes.map((measured) => ({
      params: { ...params, hole: `${measured.hole.number}` },
      props: { ...props, measured },
    })),
  );

/** Every hole once, for what is the same in every language: pictures. */
export const heightsPaths = (): { params: { course: string; hole: string }; props: Omit<HoleProps, "club"> }[] =>
  currentGuide().courses.flatMap((course) =>
    course.ground
      ? course.holes.map((measured) => ({
          params: { course: course.course.id, hole: `${measured.hole.number}` },
          props: { course, measured },
        }))
      : [],
  );
