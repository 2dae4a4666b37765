/** Once before all browser tests: serves the built demo, and starts the browser. */
import type { TestProject } from "vitest/node";
import { startServer } from "./browser-server.ts";
import { builtDemo, DEMO_BASE } from "./demo.ts";
import { serve, type ServedSite } from "./site.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** The demo, built and served. */
    site: ServedSite;
    /** Where the running browser listens. */
    browser: string;
  }
}

export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const { site, close } = await serve(await builtDemo(), DEMO_BASE);
  const browser = await startServer();
  project.provide("site", site);
  project.provide("browser", browser.wsEndpoint());
  return async () => {
    await browser.close();
    await close();
  };
}
