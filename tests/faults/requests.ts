/** Requests as no browser sends them, thrown at a server by raw sockets. */
import { connect } from "node:net";
import { damaged, type Random } from "./random.ts";

const METHODS = [
  "GET",
  "HEAD",
  "POST",
  "PUT",
  "DELETE",
  "OPTIONS",
  "TRACE",
  "PATCH",
  "CONNECT",
  "PROPFIND",
  "get",
  "",
  "G\u0000T",
  "M".repeat(300),
];
const VERSIONS = ["HTTP/1.1", "HTTP/1.0", "HTTP/0.9", "HTTP/2.0", "HTTP/1.9", "HTTP/", "", "ICY/1.1"];
const PIECES = [
  "..",
  "%2e%2e",
  ".",
  "%00",
  "%",
  "%zz",
  "%c0%af",
  "%ff",
  "\\",
  "index.html",
  "a".repeat(2000),
  "é",
  "\u0001",
  "?",
  "#",
  ";",
  "*",
  "%2f",
  ".marram.json",
  " ",
  "~",
  "CON",
  "%e2%80%ae",
];
const RANGES = [
  "5-2",
  "0-",
  "-",
  "-0",
  "-1",
  "a-b",
  "1",
  "0-99999999999999999999",
  "99999999999999999999-",
  "0-0,-1",
  "0-1,2-3,4-5",
  "-99999999999",
  "--1",
  "1e3-",
  "0x1-2",
  " 1 - 2 ",
  "NaN-NaN",
  "9007199254740993-9007199254740994",
];
const VALUES = [
  "",
  "0",
  "-1",
  "\u0000",
  "x".repeat(20_000),
  "chunked",
  "identity, chunked",
  "*",
  '"',
  'W/""',
  "Thu, 99 Foo 2020 99:99:99 GMT",
  "100-continue",
  "200-fine",
  "close, keep-alive",
  "h2c",
  "gzip;q=9",
  "\tfolded",
  "é",
];
const HEADERS = [
  "Range",
  "If-Range",
  "If-None-Match",
  "If-Match",
  "If-Modified-Since",
  "If-Unmodified-Since",
  "Content-Length",
  "Transfer-Encoding",
  "Connection",
  "Upgrade",
  "Expect",
  "Accept-Encoding",
  "Host",
  "Cookie",
  "TE",
  "Trailer",
  "X-Forwarded-Host",
];
const HOSTS = [
  "localhost",
  "127.0.0.1:80",
  "[::1]:4321",
  "evil.example",
  "",
  "localhost:99999",
  "[",
  "a".repeat(500),
  "localhost.evil.example",
  "127.0.0.1.evil.example",
  "\u0000",
];

function target(random: Random): string {
  const path = Array.from({ length: random.below(6) }, () => random.pick(PIECES)).join(
    random.pick(["/", "/", "//", ""]),
  );
  return (
    random.pick([
      "/",
      "/",
      "/",
      "//",
      "",
      "http://",
      "http://localhost/",
      "http://evil.example/",
      "https://[",
      "*",
      "file:///",
    ]) + path
  );
}

/** One of many kinds of request that are wrong, or nearly right. */
export function malformedRequest(random: Random, paths: readonly string[]): Buffer {
  const known = random.pick(paths);
  const plain = `GET ${known} HTTP/1.1\r\nHost: localhost\r\n`;
  switch (random.below(7)) {
    case 0:
      return Buffer.from(
        `${plain}Range: ${random.pick(["bytes=", "bytes=", "bytes", "items=", ""])}${random.pick(RANGES)}\r\n\r\n`,
      );
    case 1:
      return damaged(Buffer.from(`${plain}Range: bytes=0-3\r\nIf-None-Match: "a"\r\nAccept: */*\r\n\r\n`), random);
    case 2:
      return random.bytes(1 + random.below(400));
    case 3:
      return Buffer.from(
        `${random.pick(METHODS)} ${known} ${random.pick(VERSIONS)}\r\nHost: ${random.pick(HOSTS)}\r\n\r\n`,
        "latin1",
      );
    case 4:
      return Buffer.from(
        `GET ${target(random)} HTTP/1.1\r\nHost: localhost\r\n\r\n`,
        random.chance(0.5) ? "latin1" : "utf8",
      );
    case 5: {
      const headers = Array.from(
        { length: 1 + random.below(5) },
        () => `${random.pick(HEADERS)}${random.pick([": ", ": ", ":", " : ", ""])}${random.pick(VALUES)}`,
      );
      return Buffer.from(
        `${random.pick(["GET", "HEAD", "POST"])} ${known} HTTP/1.1\r\n${random.chance(0.8) ? "Host: localhost\r\n" : ""}${headers.join(random.pick(["\r\n", "\r\n", "\n", "\r"]))}\r\n\r\n${random.pick(["", "5\r\nhello\r\n0\r\n\r\n", "zz\r\n", "x".repeat(100)])}`,
        "latin1",
      );
    }
    // More than one at once, the second spoilt.
    default:
      return Buffer.concat([Buffer.from(`${plain}\r\n`), damaged(Buffer.from(`${plain}\r\n`), random)]);
  }
}

/** Bytes on their way to a server, and what comes back. */
interface Exchange {
  /** Says no more, and resolves with all that came back until the server hung up. */
  hangUp(): Promise<string>;
  /** Resolves as {@link hangUp}, when the server hangs up. */
  readonly over: Promise<string>;
}

function exchange(port: number, bytes: Uint8Array): Exchange {
  const socket = connect({ port, host: "127.0.0.1" });
  const over = new Promise<string>((resolve) => {
    const got: Buffer[] = [];
    socket.on("data", (data: Buffer) => void got.push(data));
    // Being cut off is an answer too.
    socket.on("error", () => undefined);
    socket.on("close", () => resolve(Buffer.concat(got).toString("latin1")));
  });
  socket.write(bytes);
  return {
    over,
    hangUp: () => {
      socket.end();
      return over;
    },
  };
}

const askPlainly = (port: number, path: string): Promise<string> =>
  exchange(port, Buffer.from(`GET ${path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n`)).over;

/** What a server may say to such a request; 500 is its own fault and never among them. */
const ANSWERS = [100, 200, 206, 302, 304, 400, 404, 405, 412, 413, 414, 416, 417, 421, 431, 505];

export interface RequestFaults {
  readonly tried: number;
  /** What went wrong, each with the request that did it. */
  readonly lost: readonly string[];
  /** How often each status was answered. */
  readonly statuses: ReadonlyMap<number, number>;
}

/**
 * Throws so many malformed requests at a server, and asks in between whether it still answers.
 *
 * @param paths that it answers with 200.
 * @param secret text that stands beside the folder it serves.
 */
export async function throwRequests(
  port: number,
  count: number,
  random: Random,
  paths: readonly string[],
  secret: string,
): Promise<RequestFaults> {
  const lost: string[] = [];
  const statuses = new Map<number, number>();
  const AT_ONCE = 20;
  for (let done = 0; done < count;) {
    const requests = Array.from({ length: Math.min(AT_ONCE, count - done) }, () => malformedRequest(random, paths));
    const exchanges = requests.map((request) => exchange(port, request));
    // Who hangs up at once is not answered. When a later question has its answer, so has an earlier one.
    let alive = "";
    for (let again = 0; again < 3; again++) alive = await askPlainly(port, paths[0]!);
    const answers = await Promise.all(exchanges.map((one) => one.hangUp()));
    for (const [i, answer] of answers.entries()) {
      const told = requests[i]!.toString("latin1").slice(0, 300);
      for (const [, code] of answer.matchAll(/^HTTP\/1\.1 (\d{3}) /gm)) {
        const status = Number(code);
        statuses.set(status, (statuses.get(status) ?? 0) + 1);
        if (!ANSWERS.includes(status)) lost.push(`answered ${status}: ${JSON.stringify(told)}`);
      }
      if (answer.includes(secret)) lost.push(`gave away what lies beside the folder: ${JSON.stringify(told)}`);
    }
    done += requests.length;
    if (!alive.startsWith("HTTP/1.1 200 ")) {
      lost.push(
        `no longer answers after: ${requests.map((request) => JSON.stringify(request.toString("latin1").slice(0, 120))).join("\n")}`,
      );
      break;
    }
  }
  return { tried: count, lost, statuses };
}
