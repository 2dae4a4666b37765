/** Keeping the guide on a device, in English. */
import type { KeepWords } from "../islands/keep/words.ts";

export const englishKeep: KeepWords = {
  keep: "Keep this guide on my phone",
  before: "Takes {size}. Every page and map then opens without a network.",
  keeping: "{done} of {size} are here",
  stop: "Stop",
  kept: "The guide is kept on this device ({size}) and opens without a network.",
  newer: "The club has changed its guide. The change takes {size}.",
  update: "Fetch the change",
  stale: "The changed guide is here. This page is still of the one before.",
  reload: "Show the changed page",
  remove: "Remove from this device",
  removed: "Removed. The guide needs a network again.",
  again: "Try again",
  megabytes: "{number} MB",
  faults: {
    network: "The network gave out before everything was here. What has come stays for the next try.",
    changed: "What came is not the guide as the club made it: it may have been changed just now. Try again in a few minutes.",
    full: "There is not enough room on this device. The guide takes {size}.",
    refused: "This browser lets the guide keep nothing, as in a private window.",
    unsupported: "This browser cannot keep a guide, or the guide’s address does not begin with https.",
  },
};
