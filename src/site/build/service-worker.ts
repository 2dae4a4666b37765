/** Bundles the service worker into one file at the guide's root: its reach is the folder it lies in. */
import { fileURLToPath } from "node:url";
import { build } from "vite";
import { WORKER_FILE } from "./edition.ts";

export async function bundleWorker(folder: string): Promise<void> {
  await build({
    configFile: false,
    logLevel: "warn",
    publicDir: false,
    build: {
      outDir: folder,
      emptyOutDir: false,
      rolldownOptions: {
        input: fileURLToPath(new URL("../../islands/keep/worker.ts", import.meta.url)),
        output: { format: "iife", entryFileNames: WORKER_FILE },
      },
    },
  });
}
