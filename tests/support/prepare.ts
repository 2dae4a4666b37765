/** Before the tests: the demo guide they share is built, unless it is there. Run: `node tests/support/prepare.ts`. */
import { builtDemo } from "./demo.ts";

await builtDemo();
console.log("The demo guide is built.");
