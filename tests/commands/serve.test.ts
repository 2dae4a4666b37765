/** `npm run serve`: a built folder over HTTP, from the path it was built for. */
import { spawn, type ChildProcess } from "node:child_process";
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { createServer, request, type IncomingHttpHeaders, type Server } from "node:http";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { writeRecord } from "../../src/site/build/build-record.ts";
import { PROJECT, run } from "../support/run.ts";

const SERVE = "src/commands/serve.ts";
let folder: string;
const children: ChildProcess[] = [];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "marram-serve-"));
  for (const [name, base] of [
    ["rooted", "/"],
    ["based", "/guides/sample/"],
  ] as const) {
    await mkdir(join(folder, name, "course-1/1"), { recursive: true });
    await writeFile(join(folder, name, "index.html"), "cover");
    await writeFile(join(folder, name, "course-1/1/index.html"), "hole one");
    await writeFile(join(folder, name, "course-1/1/captions.vtt"), "WEBVTT");
    await writeFile(join(folder, name, "manifest.webmanifest"), "{}");
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
const serve = async (...args: string[]): Promise<string> => (await serveAndListen(...args)).address;

/** Starts serving and resolves with all it says until it is ready. */
function serveAndListen(...args: string[]): Promise<{ address: string; said: string }> {
  const child = spawn(process.execPath, [join(PROJECT, SERVE), ...args], { stdio: ["ignore", "pipe", "pipe"] });
  children.push(child);
  return new Promise((resolve, reject) => {
    let said = "";
    const hear = (text: Buffer): void => {
      said += text.toString();
      const address = /The guide is at (\S+)/.exec(said)?.[1];
      if (address && said.includes("Press Ctrl+C")) resolve({ address, said });
    };
    child.stdout.on("data", hear);
    child.stderr.on("data", hear);
    child.on("close", () => reject(new Error(said)));
  });
}

interface Answer {
  readonly status: number | undefined;
  readonly location: string | undefined;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

/** Asks for exactly this path; `fetch` would tidy it first. */
function ask(
  address: string,
  path: string,
  { method = "GET", headers = {} }: { method?: string; headers?: Record<string, string> } = {},
): Promise<Answer> {
  const { hostname, port } = new URL(address);
  return new Promise((resolve, reject) => {
    request({ hostname: hostname.replace(/^\[|\]$/g, ""), port, path, method, headers }, (response) => {
      let body = "";
      response.setEncoding("utf8").on("data", (text: string) => (body += text));
      response.on("end", () =>
        resolve({ status: response.statusCode, location: response.headers.location, headers: response.headers, body }),
      );
    })
      .on("error", reject)
      .end();
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
  for (const path of [
    "/../secret.txt",
    "/..%2fsecret.txt",
    "/%2e%2e/secret.txt",
    "//../secret.txt",
    "/course-1/../../secret.txt",
    "/.marram.json",
  ]) {
    const { status, body } = await ask(address, path);
    expect(status, path).not.toBe(200);
    expect(body, path).not.toContain("secret");
  }
});

test("ranges: a part is sent, and a part that is not there is refused with the file's size", async () => {
  const address = await serve("--out", join(folder, "rooted"));
  const part = (range: string): Promise<Answer> => ask(address, "/course-1/1/", { headers: { Range: range } });
  expect(await part("bytes=0-3")).toMatchObject({
    status: 206,
    body: "hole",
    headers: { "content-range": "bytes 0-3/8" },
  });
  expect(await part("bytes=-3")).toMatchObject({ status: 206, body: "one" });
  for (const range of ["bytes=5-2", "bytes=8-", "bytes=99-100", "bytes=-0"]) {
    expect(await part(range), range).toMatchObject({ status: 416, headers: { "content-range": "bytes */8" } });
  }
  // RFC 9110, 14.2: a unit that is not known is as if nothing was said.
  expect(await part("lines=1-2")).toMatchObject({ status: 200, body: "hole one" });
  expect(await part("bytes=0-0")).toMatchObject({ status: 206, body: "h" });
});

test("every method but GET and HEAD is refused, and what is allowed is said", async () => {
  const { hostname: host, port } = new URL(await serve("--out", join(folder, "rooted"), "--host", "127.0.0.1"));
  for (const method of ["POST", "PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "CONNECT"]) {
    const answer = await new Promise<string>((resolve) => {
      const socket = connect({ port: Number(port), host }, () =>
        socket.write(`${method} / HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n`),
      );
      let said = "";
      socket.on("data", (data) => (said += data.toString())).on("close", () => resolve(said));
    });
    expect(answer).toMatch(/^HTTP\/1\.1 405 Method Not Allowed\r\n/);
    expect(answer).toMatch(/\r\nAllow: GET, HEAD\r\n/);
  }
});

test("HEAD says what GET would send, without it", async () => {
  const address = await serve("--out", join(folder, "rooted"));
  for (const path of ["/", "/course-1/1/", "/nowhere"]) {
    const [whole, head] = [await ask(address, path), await ask(address, path, { method: "HEAD" })];
    expect(head).toMatchObject({ status: whole.status, body: "" });
    expect(head.headers["content-length"]).toBe(String(whole.body.length));
  }
});

test("a name that a website pointed at this machine gets nothing; this machine's own names and addresses do", async () => {
  const address = await serve("--out", join(folder, "rooted"));
  const as = async (host: string): Promise<number | undefined> =>
    (await ask(address, "/", { headers: { Host: host } })).status;
  for (const host of [
    "rebound.example",
    "rebound.example:4321",
    "localhost.example",
    "127.0.0.1.example",
    "[::1].example",
  ])
    expect(await as(host), host).toBe(421);
  for (const host of [
    "localhost",
    "localhost:8080",
    "LOCALHOST.",
    "guide.localhost",
    "127.0.0.1:4321",
    "[::1]:4321",
    "192.0.2.7",
  ])
    expect(await as(host), host).toBe(200);
  // RFC 9112, 3.2.2: the target's own host counts where there is one.
  expect(await ask(address, "http://rebound.example/", { headers: { Host: "localhost" } })).toMatchObject({
    status: 421,
  });
  expect(await ask(address, "http://localhost/course-1/1/", { headers: { Host: "rebound.example" } })).toMatchObject({
    status: 200,
    body: "hole one",
  });
});

test("captions and the manifest say what they are", async () => {
  const address = await serve("--out", join(folder, "rooted"));
  expect((await ask(address, "/course-1/1/captions.vtt")).headers["content-type"]).toBe("text/vtt; charset=utf-8");
  expect((await ask(address, "/manifest.webmanifest")).headers["content-type"]).toBe(
    "application/manifest+json; charset=utf-8",
  );
  expect((await ask(address, "/")).headers["content-type"]).toBe("text/html; charset=utf-8");
});

test("a folder without its slash is led to it, and never to another host", async () => {
  const address = await serve("--out", join(folder, "rooted"));
  expect(await ask(address, "/course-1/1")).toMatchObject({ status: 302, location: "/course-1/1/" });
  expect(await ask(address, "//course-1")).toMatchObject({ status: 302, location: "/course-1/" });
});

test("listening beyond this machine says what that means; on this machine nothing is said", async () => {
  const { said } = await serveAndListen("--out", join(folder, "rooted"), "--host", "0.0.0.0");
  expect(said).toContain("can read the guide, unencrypted, until you stop it");
  expect(said).toContain("To publish, copy the folder to a web host instead.");
  for (const host of ["localhost", "127.0.0.1"])
    expect((await serveAndListen("--out", join(folder, "rooted"), "--host", host)).said).not.toContain("unencrypted");
});

test("the next free port is taken, and a port asked for is not exchanged for another", async () => {
  const taken: Server = createServer();
  await new Promise<void>((done) => taken.listen(0, "localhost", done));
  const address = taken.address();
  const port = typeof address === "object" && address !== null ? address.port : 0;
  const { code, stderr } = await run(SERVE, ["--out", join(folder, "rooted"), "--port", String(port)]);
  taken.close();
  expect(code).toBe(1);
  expect(stderr).toBe(
    `Port ${port} is taken or not allowed. Write another with --port, or leave it out to take the first free one.\n`,
  );
  const [one, two] = [await serve("--out", join(folder, "rooted")), await serve("--out", join(folder, "rooted"))];
  expect(Number(new URL(two).port)).toBeGreaterThan(Number(new URL(one).port));
});

test("says what is missing", async () => {
  expect(await run(SERVE, ["--out", folder])).toMatchObject({
    code: 1,
    stderr: `There is no built guide in ${folder}. Run: npm run build\n`,
  });
  expect((await run(SERVE, ["--port", "http"])).stderr).toContain(
    '--port is "http": expected a number from 1 to 65535.',
  );
  expect((await run(SERVE, ["--out", join(folder, "rooted"), "--host", "nowhere.invalid"])).stderr).toContain(
    '--host is "nowhere.invalid": this machine has no such name or address.',
  );
  expect((await run(SERVE, ["--prot", "1"])).stderr).toContain("Unknown option '--prot'.\n\nUsage: npm run serve");
});
