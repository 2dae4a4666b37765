/** Mistakes in the content, already told; the build goes no further. */
export class ContentError extends Error {
  override readonly name = "ContentError";

  constructor(message: string) {
    super(message);
    // Where in our code it was noticed says nothing about the content.
    this.stack = `${this.name}: ${message}`;
  }
}
