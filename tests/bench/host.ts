/**
 * A static host for benchmarks: compression, files named by their content kept for a year, a record of what
 * was sent.
 */
import { readFile } from "node:fs/promises";
import { createServer, type Server, type ServerResponse } from "node:http";
import { extname, join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { gzipSync } from "node:zlib";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".svg": "image/svg+xml",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".webp": "image/webp",
  ".avif": "image/avif",
  ".jpg": "image/jpeg",
  ".png": "image/png",
  ".woff2": "font/woff2",
};
const COMPRESSED = new Set([".html", ".css", ".js", ".svg", ".json", ".webmanifest"]);

/**
 * A network between host and browser: what a request waits for its answer, and what all answers together get
 * through.
 */
export interface Network {
  readonly delayMs: number;
  readonly bytesPerSecond: number;
}

export interface Sent {
  readonly path: string;
  readonly bytes: number;
}

export interface Host {
  /** `http://127.0.0.1:1234`, without a slash at the end. */
  readonly origin: string;
  /**
   * What was sent since the last call of {@link Host.forget}: paths, and bytes of the bodies as they went
   * over the wire.
   */
  readonly sent: readonly Sent[];
  forget(): void;
  /** Slows the host down to a network; without one it answers at once. */
  slow(network: Network | undefined): void;
  close(): void;
}

/** @param folders folders by the path they are served from, a slash at both ends; the longest that fits serves */
export async function host(folders: Readonly<Record<string, string>>): Promise<Host> {
  const bases = Object.keys(folders).sort((a, b) => b.length - a.length);
  const kept = new Map<string, Promise<Buffer>>();
  let sent: Sent[] = [];
  let network: Network | undefined;
  let wire: Promise<unknown> = Promise.resolve();

  /** Compressed once: compressing again for each request would be measured with the browser on a shared processor. */
  const bodyOf = (file: string): Promise<Buffer> => {
    const body =
      kept.get(file) ?? readFile(file).then((bytes) => (COMPRESSED.has(extname(file)) ? gzipSync(bytes) : bytes));
    kept.set(file, body);
    return body;
  };
  /** In pieces that take turns on the wire, so that answers come side by side. */
  const send = async (response: ServerResponse, body: Buffer): Promise<void> => {
    for (let at = 0; network !== undefined && at < body.length; at += 8192) {
      const piece = body.subarray(at, at + 8192);
      const wait = (1000 * piece.length) / network.bytesPerSecond;
      await (wire = wire.then(() => pause(wait)));
      response.write(piece);
    }
    response.end(network === undefined ? body : undefined);
  };
  const server: Server = createServer((request, response) => {
    void (async () => {
      const path = decodeURIComponent(new URL(request.url ?? "/", "http://host.invalid").pathname);
      const base = bases.find((one) => path.startsWith(one));
      const name =
        base === undefined ? undefined : `${path.slice(base.length)}${path.endsWith("/") ? "index.html" : ""}`;
      if (network !== undefined) await pause(network.delayMs);
      const body =
        base === undefined || name === undefined
          ? undefined
          : await bodyOf(join(folders[base]!, name)).catch(() => undefined);
      if (body === undefined || name === undefined) return response.writeHead(404).end();
      const type = extname(name);
      response.writeHead(200, {
        "Content-Type": TYPES[type] ?? "application/octet-stream",
        "Content-Length": body.length,
        "Cache-Control": name.startsWith("_astro/") ? "public, max-age=31536000, immutable" : "public, max-age=600",
        ...(COMPRESSED.has(type) ? { "Content-Encoding": "gzip" } : {}),
      });
      sent.push({ path, bytes: body.length });
      await send(response, body);
    })();
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  return {
    origin: `http://127.0.0.1:${portOf(server)}`,
    get sent() {
      return sent;
    },
    forget() {
      sent = [];
    },
    slow(next) {
      network = next;
    },
    close() {
      server.close();
      server.closeAllConnections();
    },
  };
}

export const sumOf = (sent: readonly Sent[]): number => sent.reduce((sum, { bytes }) => sum + bytes, 0);

export const portOf = (server: Server): number => {
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("The server has no port.");
  return address.port;
};
