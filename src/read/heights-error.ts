/** A height file that cannot be used: what is wrong with it, then what to type. */
export class HeightsError extends Error {
  override readonly name = "HeightsError";
  /** The file as the content names it. */
  readonly file: string;

  constructor(file: string, message: string, options?: ErrorOptions) {
    super(`${file}: ${message}`, options);
    this.file = file;
  }
}
