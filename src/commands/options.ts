/** Options of our commands, and the one way they end badly. */
import { parseArgs, type ParseArgsOptionsConfig } from "node:util";
import { systemSentence } from "./system-sentence.ts";

/** Something the person at the keyboard can put right; told without a stack trace. */
export class CommandError extends Error {
  override readonly name = "CommandError";
}

type Values<T extends ParseArgsOptionsConfig> = ReturnType<
  typeof parseArgs<{ options: T; strict: true; allowPositionals: false }>
>["values"];

/** @throws CommandError with the usage when an option is unknown, lacks its value, or a loose word stands there. */
export function readOptions<T extends ParseArgsOptionsConfig>(
  args: readonly string[],
  options: T,
  usage: string,
): Values<T> {
  try {
    return parseArgs({ args: [...args], options, strict: true, allowPositionals: false }).values;
  } catch (error) {
    const reason = error instanceof Error ? error.message.split(". To specify")[0] : String(error);
    throw new CommandError(`${reason?.replace(/\.?$/, ".")}\n\n${usage}`);
  }
}

/** The last lines of every command's help. */
export const EXIT_CODES = `Ends with 0 when all is done, with 1 when something is to be put right (options, content, the disk; it is said what),
and with 2 on a fault of Marram itself.`;

/** Errors whose message is meant to be read by whoever runs the command. */
const TOLD = ["CommandError", "ContentError", "BringError"];

/** Set to see where an error came from. */
const TRACE_VARIABLE = "MARRAM_TRACE";

interface Told {
  readonly text: string;
  readonly code: 1 | 2;
}

/** What is said of an error: one sentence with place and remedy. */
export function tellError(error: unknown): Told {
  for (let one: unknown = error, depth = 0; one instanceof Error && depth < 8; one = one.cause, depth++) {
    if (TOLD.includes(one.name)) return { text: one.message, code: 1 };
    const sentence = systemSentence(one);
    if (sentence !== undefined) return { text: sentence, code: 1 };
  }
  const message = error instanceof Error ? `${error.name}: ${error.message.split("\n")[0]}` : String(error);
  return {
    text: `A fault of Marram itself, not of what you wrote (${message}). Please report it, with what was run; ${TRACE_VARIABLE}=1 before the command shows where it happened.`,
    code: 2,
  };
}

/** Runs a command's body; its errors become a sentence and an exit code, see {@link EXIT_CODES}. */
export async function runCommand(body: () => Promise<void>): Promise<void> {
  const fail = (error: unknown): void => {
    const { text, code } = tellError(error);
    console.error(text);
    if (process.env[TRACE_VARIABLE]) console.error(error);
    process.exitCode = code;
  };
  // Whoever reads what we print may stop reading, as `head` does.
  for (const stream of [process.stdout, process.stderr]) {
    stream.on("error", (error: NodeJS.ErrnoException) => {
      if (error.code !== "EPIPE") throw error;
      process.exit();
    });
  }
  for (const event of ["uncaughtException", "unhandledRejection"] as const) {
    process.once(event, (error: unknown) => {
      fail(error);
      process.exit();
    });
  }
  try {
    await body();
  } catch (error) {
    fail(error);
  }
}
