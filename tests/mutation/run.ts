/**
 * `npm run mutation [-- geo flight/wind ...]`: breaks the code of pure folders line by line
 * and counts how much of it their tests notice. Prints a score for each folder and fails
 * below {@link LEAST_SCORE}. What was found is kept, so that a second run tries only what
 * changed. The tool has a lock of its own here and is installed when it is asked for.
 */
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { PROJECT } from "../support/run.ts";
import { FOLDER_VARIABLE, FOLDERS } from "./folders.ts";

/** Percent of the mutants that tests notice. */
const LEAST_SCORE = 85;

const HERE = join(PROJECT, "tests/mutation");
const KEPT = join(PROJECT, "node_modules/.cache/marram-mutation");

interface Report {
  readonly files: Readonly<
    Record<
      string,
      {
        readonly mutants: readonly {
          readonly status: string;
          readonly mutatorName: string;
          readonly location: { readonly start: { readonly line: number } };
          readonly replacement?: string;
        }[];
      }
    >
  >;
}

/** The tool is held together by its own lock; vitest is ours, found further up. */
function install(): void {
  if (existsSync(join(HERE, "node_modules/@stryker-mutator/vitest-runner"))) return;
  const { status } = spawnSync("npm ci --legacy-peer-deps --ignore-scripts --loglevel=error", {
    cwd: HERE,
    stdio: "inherit",
    shell: true,
  });
  if (status !== 0) throw new Error("The mutation tool could not be installed.");
}

/** @param part a folder of the source, or a file within one without its ending */
function mutate(part: string): Report {
  const [folder] = part.split("/") as [string];
  const name = part.replaceAll("/", "-");
  const report = join(KEPT, `${name}-report.json`);
  const settings = join(KEPT, `${name}.config.json`);
  mkdirSync(KEPT, { recursive: true });
  writeFileSync(
    settings,
    JSON.stringify({
      testRunner: "vitest",
      plugins: ["@stryker-mutator/vitest-runner"],
      vitest: { configFile: "tests/mutation/vitest.config.ts", related: false },
      mutate: [part === folder ? `src/${folder}/**/*.ts` : `src/${part}.ts`],
      // What is said is held by the tests of wording; here it is whether code is noticed.
      mutator: { excludedMutations: ["StringLiteral"] },
      coverageAnalysis: "perTest",
      concurrency: 2,
      incremental: true,
      incrementalFile: join(KEPT, `${name}-incremental.json`),
      reporters: ["json", "progress-append-only"],
      jsonReporter: { fileName: report },
      tempDirName: join(KEPT, "sandbox"),
      ignorePatterns: [
        "*",
        "!src",
        "!src/**",
        "!tests",
        "!tests/**",
        "tests/mutation/node_modules",
        "!package.json",
        "!tsconfig.json",
      ],
      allowConsoleColors: false,
    }),
  );
  const { status } = spawnSync(
    process.execPath,
    [join(HERE, "node_modules/@stryker-mutator/core/bin/stryker.js"), "run", settings],
    {
      cwd: PROJECT,
      stdio: "inherit",
      env: { ...process.env, [FOLDER_VARIABLE]: folder },
    },
  );
  if (status !== 0) throw new Error(`Mutating ${part} failed.`);
  return JSON.parse(readFileSync(report, "utf8")) as Report;
}

const NOTICED = new Set(["Killed", "Timeout"]);
const COUNTED = new Set([...NOTICED, "Survived", "NoCoverage"]);

const parts = process.argv.slice(2).length > 0 ? process.argv.slice(2) : FOLDERS;
install();
const lines: string[] = [];
let [allNoticed, all] = [0, 0];
for (const part of parts) {
  const mutants = Object.entries(mutate(part).files).flatMap(([file, { mutants: of }]) =>
    of.map((mutant) => ({ file, ...mutant })),
  );
  const counted = mutants.filter(({ status }) => COUNTED.has(status));
  const noticed = counted.filter(({ status }) => NOTICED.has(status)).length;
  for (const { file, status, mutatorName, location, replacement } of counted.filter(
    (one) => !NOTICED.has(one.status),
  )) {
    console.log(
      `${file}:${location.start.line}: ${status}: ${mutatorName}: ${(replacement ?? "").replaceAll(/\s+/g, " ").slice(0, 100)}`,
    );
  }
  lines.push(
    `${part.padEnd(24)} ${String(counted.length).padStart(6)} mutants ${String(noticed).padStart(6)} noticed ${((100 * noticed) / counted.length).toFixed(1).padStart(6)} %`,
  );
  [allNoticed, all] = [allNoticed + noticed, all + counted.length];
}
const score = (100 * allNoticed) / all;
console.log(
  `\n${lines.join("\n")}\n${"all".padEnd(24)} ${String(all).padStart(6)} mutants ${String(allNoticed).padStart(6)} noticed ${score.toFixed(1).padStart(6)} %`,
);
if (score < LEAST_SCORE) {
  console.error(`Less than ${LEAST_SCORE} % is noticed.`);
  process.exitCode = 1;
}
