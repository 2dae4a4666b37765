/** `npm run words`: reads every catalogue, says what is wrong with it, and writes the types of the words. */
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { loadCatalogues, WORDS_FOLDER } from "../words/load.ts";
import { typesOf } from "../words/typing.ts";
import { EXIT_CODES, readOptions, runCommand } from "./options.ts";

const PROJECT = fileURLToPath(new URL("../../", import.meta.url));

const USAGE = `Usage: npm run words
Reads the guide's words (${WORDS_FOLDER}/*.yaml), says what is wrong with file and line, and writes the types of the
words (${WORDS_FOLDER}/catalogue-type.ts) from the first language.`;

await runCommand(async () => {
  const options = readOptions(process.argv.slice(2), { help: { type: "boolean" } }, USAGE);
  if (options.help) {
    console.log(`${USAGE}\n${EXIT_CODES}`);
    return;
  }
  const catalogues = loadCatalogues(PROJECT);
  await writeFile(join(PROJECT, WORDS_FOLDER, "catalogue-type.ts"), typesOf(catalogues[0]!));
  console.log(`Words in ${catalogues.map(({ language }) => language).join(", ")} agree; their types are written.`);
});
