/** A file that is not read, and why. */

/** Told to the person at the keyboard as it is: names the file, what was found and what to type. */
export class BringError extends Error {
  override readonly name = "CommandError";

  constructor(file: string, message: string, options?: ErrorOptions) {
    super(`${file}: ${message}`, options);
  }
}
