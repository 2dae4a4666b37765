/** Options of our commands, and the one way they end badly. */
import { parseArgs, type ParseArgsOptionsConfig } from "node:util";

/** Something the person at the keyboard can put right; told without a stack trace. */
export class CommandError extends Error {
  override readonly name = "CommandError";
}

type Values<T extends ParseArgsOptionsConfig> = ReturnType<typeof parseArgs<{ options: T; strict: true; allowPositionals: false }>>["values"];

/** @throws CommandError with the usage when an option is unknown, lacks its value, or a loose word stands there. */
export function readOptions<T extends ParseArgsOptionsConfig>(args: readonly string[], options: T, usage: string): Values<T> {
  try {
    return parseArgs({ args: [...args], options, strict: true, allowPositionals: false }).values;
  } catch (error) {
    const reason = error instanceof Error ? error.message.split(". To specify")[0] : String(error);
    throw new CommandError(`${reason?.replace(/\.?$/, ".")}\n\n${usage}`);
  }
}

/** Runs a command's body; its errors become a message and exit code 1. */
export async function runCommand(body: () => Promise<void>): Promise<void> {
  try {
    await body();
  } catch (error) {
    const told = error instanceof Error && ["CommandError", "ContentError"].includes(error.name);
    console.error(told ? error.message : error);
    process.exitCode = 1;
  }
}
