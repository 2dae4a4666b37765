/** The hole's `ground.json`, fetched when a golfer's length first needs it. */
import { readGroundData, type GroundData } from "../contract/ground-data.ts";

export class GroundFile {
  private readonly arrived: () => void;
  private readonly failed: () => void;
  private readonly signal: AbortSignal | undefined;
  private data: GroundData | undefined;
  private asked = false;

  /**
   * @param arrived called once, when there is data
   * @param failed called when it did not come; it is asked for again with the next need
   * @param signal ends what is asked for; then neither is called
   */
  constructor(arrived: () => void, failed: () => void, signal?: AbortSignal) {
    this.arrived = arrived;
    this.failed = failed;
    this.signal = signal;
  }

  /** What is there now; the first call fetches it. */
  now(): GroundData | undefined {
    if (this.data === undefined && !this.asked) this.fetch();
    return this.data;
  }

  private fetch(): void {
    this.asked = true;
    fetch(new URL("ground.json", document.baseURI), { signal: this.signal ?? null })
      .then((response) => {
        if (!response.ok) throw new Error(`${response.status}`);
        return response.json();
      })
      .then((written: unknown) => {
        this.data = readGroundData(written);
        this.arrived();
      })
      .catch(() => {
        this.asked = false;
        if (this.signal?.aborted !== true) this.failed();
      });
  }
}
