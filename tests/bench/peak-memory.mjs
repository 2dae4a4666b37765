// Preloaded into a process under the benchmark: writes its peak resident memory, in KiB, when it ends.
import { writeFileSync } from "node:fs";

const file = process.env["PEAK_MEMORY_FILE"];
if (file) process.on("exit", () => writeFileSync(file, String(process.resourceUsage().maxRSS)));
