/** Once before tests that read the built demo from its folder. */
import type { TestProject } from "vitest/node";
import { builtDemo } from "./demo.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the built demo lies. */
    demo: string;
  }
}

export default async function setup(project: TestProject): Promise<void> {
  project.provide("demo", await builtDemo());
}
