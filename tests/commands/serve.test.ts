/** `npm run serve`: a built folder over HTTP, from the path it was built for. */
import { spawn, type ChildProcess } from "node:child_process";
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { createServer, request, type Server } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { writeRecord } from "../../src/site/build-record.ts";
import { PROJECT, run } from "../support/run.ts";

const SERVE = "src/commands/serve.ts";
let folder: string;
const children: ChildProcess[] = [];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "marram-serve-"));
  for (const [name, base] of [["rooted", "/"], ["based", "/guides/sample/"]] as const) {
    await mkdir(join(folder, name, "course-1/1"), { recursive: true });
    await writeFile(join(folder, name, "index.html"), "cover");
    await writeFile(join(folder, name, "course-1/1/index.html"), "hole one");
    await writeFile(join(folder, name, "404.html"), "lost");
    await writeRecord(join(folder, name), { madeBy: "Marram", base, pages: 2, languages: ["en"] });
  }
  await writeFile(join(folder, "secret.txt"), "secret");
});
afterAll(async () => {
  for (const child of children) child.kill();
  await rm(folder, { recursive: true, force: true });
});

/** Starts serving and resolves with the address it prints. */
function serve(...args: string[]): Promise<string> {
  const child = spawn(process.execPath, [join(PROJECT, SERVE), ...args], { stdio: ["ignore", "pipe", "pipe"] });
  children.push(child);
  return new Promise((resolve, reject) => {
    let said = "";
    const hear = (text: Buffer): void => {
      said += text.toString();
      const address = /The guide is at (\S+)/.exec(said)?.[1];
      if (address) resolve(address);
    };
    child.stdout.on("data", hear);
    child.stderr.on("data", hear);
    child.on("close", () => reject(new Error(said)));
  });
}

/** Asks for exactly this path; `fetch` would tidy it first. */
function ask(address: string, path: string): Promise<{ status: number | undefined; location: string | undefined; body: string }> {
  const { hostname, port } = new URL(address);
  return new Promise((resolve, reject) => {
    request({ hostname, port, path }, (response) => {
      let body = "";
      response.setEncoding("utf8").on("data", (text: string) => (body += text));
      response.on("end", () => resolve({ status: response.statusCode, location: response.headers.location, body }));
    }).on("error", reject).end();
  });
}

test("a guide for the root", async () => {
  const address = await serve("--out", join(folder, "rooted"));
  expect(new URL(address).pathname).toBe("/");
  expect(Number(new URL(address).port)).toBeGreaterThanOrEqual(4321);
  expect(await ask(address, "/")).toMatchObject({ status: 200, body: "cover" });
  expect(await ask(address, "/course-1/1/")).toMatchObject({ status: 200, body: "hole one" });
  expect(await ask(address, "/course-1/2/")).toMatchObject({ status: 404, body: "lost" });
});

test("a guide below a path answers there only", async () => {
  const address = await serve("--out", join(folder, "based"));
  expect(new URL(address).pathname).toBe("/guides/sample/");
  expect(await ask(address, "/guides/sample/course-1/1/")).toMatchObject({ status: 200, body: "hole one" });
  expect(await ask(address, "/course-1/1/")).toMatchObject({ status: 404 });
  expect(await ask(address, "/")).toMatchObject({ status: 302, location: "/guides/sample/" });
  expect(await ask(address, "/guides/sample")).toMatchObject({ status: 302, location: "/guides/sample/" });
});

test("nothing outside the folder, and none of its hidden files", async () => {
  const address = await serve("--out", join(folder, "rooted"));
  for (const path of ["/../secret.txt", "/..%2fsecret.txt", "/%2e%2e/secret.txt", "//../secret.txt", "/course-1/../../secret.txt", "/.marram.json"]) {
    const { status, body } = await ask(address, path);
    expect(status, path).not.toBe(200);
    expect(body, path).not.toContain("secret");
  }
});

test("the next free port is taken, and a port asked for is not exchanged for another", async () => {
  const taken: Server = createServer();
  await new Promise<void>((done) => taken.listen(0, "localhost", done));
  const address = taken.address();
  const port = typeof address === "object" && address !== null ? address.port : 0;
  const { code, stderr } = await run(SERVE, ["--out", join(folder, "rooted"), "--port", String(port)]);
  taken.close();
  expect(code).toBe(1);
  expect(stderr).toBe(`Port ${port} is taken or not allowed. Write another with --port, or leave it out to take the first free one.\n`);
  const [one, two] = [await serve("--out", join(folder, "rooted")), await serve("--out", join(folder, "rooted"))];
  expect(Number(new URL(two).port)).toBeGreaterThan(Number(new URL(one).port));
});

test("says what is missing", async () => {
  expect(await run(SERVE, ["--out", folder])).toMatchObject({ code: 1, stderr: `There is no built guide in ${folder}. Run: npm run build\n` });
  expect((await run(SERVE, ["--port", "http"])).stderr).toContain('--port is "http": expected a number from 1 to 65535.');
  expect((await run(SERVE, ["--prot", "1"])).stderr).toContain("Unknown option '--prot'.\n\nUsage: npm run serve");
});
