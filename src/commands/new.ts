/** `npm run new`: a club's folder to begin with, which builds at once. */
import { lstat, readdir } from "node:fs/promises";
import { join, resolve } from "node:path";
import { createInterface } from "node:readline/promises";
import {
  AnswerError,
  askFor,
  checkAnswer,
  defaultAnswer,
  QUESTIONS,
  readAnswers,
  type Answers,
  type Question,
} from "../bring/new/answers.ts";
import { courseFolder, newClub } from "../bring/new/club.ts";
import { finishWriting, writeAll } from "../read/write-all.ts";
import { shownFolder } from "../site/build/integration.ts";
import { CommandError, EXIT_CODES, readOptions, runCommand } from "./options.ts";

const USAGE = `Usage: npm run new -- --folder DIR [options]
  --folder DIR    folder to write, outside this one; made if it is not there, and it must be empty
  --name TEXT     the club's name
  --course TEXT   the course's name (default: the club's)
  --holes N       9 or 18 (default: 18)
  --tees LIST     "Blue:#2f5d8a,White:#f4f4f0,Red:#b3261e", longest first; common colours may be named alone (default: White, Yellow, Red)
  --units UNIT    yards or metres (default: yards)
  --at POSITION   where the first tee is, as a map gives it: "56.5012, -9.0123", degrees and minutes, or a share link
On a terminal, what is left out is asked for.`;

/** Asks on the terminal for what is missing. */
async function askOnTerminal(given: Answers): Promise<Record<Question, string>> {
  const terminal = createInterface({ input: process.stdin, output: process.stdout });
  // Lines are taken as they come: several pasted at once answer several questions.
  const lines = terminal[Symbol.asyncIterator]();
  const question = async (text: string): Promise<string> => {
    terminal.setPrompt(text);
    terminal.prompt();
    const { value, done } = await lines.next();
    // Ctrl+D or Ctrl+C in the middle of a question ends it all.
    if (done) throw new CommandError("\nNothing was written.");
    return value;
  };
  try {
    return await askFor(given, question, console.log);
  } finally {
    terminal.close();
  }
}

/** Without a terminal there is nobody to ask: defaults stand, and what has none must be given. */
function fillIn(given: Answers): Record<Question, string> {
  const answers: Partial<Record<Question, string>> = { ...given };
  for (const { key, ask } of QUESTIONS) {
    const standing = answers[key] ?? defaultAnswer(key, answers);
    if (standing !== undefined) answers[key] = standing;
    else
      throw new CommandError(
        `--${key} is missing. ${ask}: write --${key} ${key === "at" ? '"56.5012, -9.0123"' : '"Our Golf Club"'}.\n\n${USAGE}`,
      );
  }
  return answers as Record<Question, string>;
}

/** @throws CommandError unless a folder could be written there without touching anything. */
async function refuseUnlessEmpty(folder: string): Promise<void> {
  const refuse = (reason: string): never => {
    throw new CommandError(
      `The club's folder cannot be ${folder}: ${reason} Name a new folder: --folder ../our-club.`,
    );
  };
  const found = await lstat(folder).catch(() => undefined);
  if (found === undefined) return;
  if (!found.isDirectory()) refuse("that is a file or a link.");
  if ((await readdir(folder)).length > 0) refuse("it is not empty, and nothing in it is to be lost.");
}

await runCommand(async () => {
  const text = { type: "string" } as const;
  const options = readOptions(
    process.argv.slice(2),
    {
      folder: text,
      name: text,
      course: text,
      holes: text,
      tees: text,
      units: text,
      at: text,
      help: { type: "boolean" },
    },
    USAGE,
  );
  if (options.help) {
    console.log(`${USAGE}\n${EXIT_CODES}`);
    return;
  }
  if (options.folder === undefined || options.folder.trim() === "")
    throw new CommandError(
      `--folder is missing: where is the club's folder to be? Write --folder ../our-club.\n\n${USAGE}`,
    );
  const folder = resolve(options.folder);
  await finishWriting(folder);
  await refuseUnlessEmpty(folder);
  const given: Partial<Record<Question, string>> = {};
  try {
    // What is wrong with the options is told before anything is asked.
    for (const { key } of QUESTIONS) {
      const typed = options[key];
      if (typed === undefined) continue;
      checkAnswer(key, typed);
      given[key] = typed;
    }
    const onTerminal = process.stdin.isTTY && process.stdout.isTTY;
    const club = readAnswers(onTerminal ? await askOnTerminal(given) : fillIn(given));
    const files = newClub(club);
    await writeAll(
      folder,
      files.map(({ path, text: content }) => ({ file: path, text: content })),
      [join(courseFolder(club), "photos")],
    );
    const shown = shownFolder(folder);
    console.log(`${files.length} files written to ${shown}. The shapes of the holes are placeholders.`);
    console.log(
      `Look at it now:\n  npm run build -- --content ${shown} --out ${shown}-site\n  npm run serve -- --out ${shown}-site`,
    );
    console.log(
      `Then open the files in ${shown}: each says what to change. npm run check -- --content ${shown} tells what is left to do.`,
    );
  } catch (error) {
    if (error instanceof AnswerError) throw new CommandError(error.message);
    throw error;
  }
});
