/** Preloaded into a program under the benchmark: writes its processor time, all threads, as it ends. */
import { writeFileSync } from "node:fs";

process.on("exit", () => {
  const { user, system } = process.cpuUsage();
  if (process.env.PROCESSOR_TIME_FILE) writeFileSync(process.env.PROCESSOR_TIME_FILE, `${(user + system) / 1e6}`);
});
