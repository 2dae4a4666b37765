import { defineConfig } from "astro/config";
import marram from "./src/site/build/integration.ts";

export default defineConfig({
  output: "static",
  trailingSlash: "always",
  // While a picture is made in a thread of its own, the next page is drawn.
  build: { format: "directory", inlineStylesheets: "never", concurrency: 4 },
  devToolbar: { enabled: false },
  integrations: [marram()],
  // A Content-Security-Policy without 'unsafe-inline' needs every script and style in a file.
  // The live map's library is one large file, fetched only by who opens the map.
  vite: {
    build: {
      assetsInlineLimit: 0,
      chunkSizeWarningLimit: 2000,
      // Names that pages and scripts share are written out where they are used; else all of them would travel with
      // every page.
      rolldownOptions: { optimization: { inlineConst: { mode: "all" } } },
    },
    environments: {
      client: {
        build: {
          rolldownOptions: {
            // What pages need together is one file: many small ones weigh more.
            output: {
              codeSplitting: {
                groups: [
                  { name: "settings", test: /src\/(geo\/units|tell\/(format|voice)|islands\/settings[a-z-]*)\.ts$/ },
                  {
                    name: "opening",
                    test: /src\/islands\/(openable|opening|island-words|map\/(page-side|failure|styles))\.ts$/,
                  },
                ],
              },
            },
          },
        },
      },
    },
  },
});
