/** A built guide over HTTP, as a static host would serve it: to read, from its path, and nothing beside it. */
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import send from "send";
import { isNamed } from "./host-names.ts";

/** RFC 9110, 10.2.1: what a refused method is answered with. */
const ALLOWED = "GET, HEAD";

export interface ServedGuide {
  /** Folder of the built guide. */
  readonly folder: string;
  /** The path it was built for, with a slash at each end. */
  readonly base: string;
  /** The page for an address that leads nowhere. */
  readonly lost?: string | Uint8Array;
  /** Names this server answers to, besides addresses in figures and localhost; see {@link isNamed}. */
  readonly names?: readonly string[];
}

interface Target {
  readonly host: string | undefined;
  /** As it was asked for, still percent-encoded, without its query. */
  readonly path: string;
}

/** Where a request is going; its target may be a path or a whole address (RFC 9112, 3.2). */
function targetOf({ url = "", headers }: IncomingMessage): Target | undefined {
  if (url.startsWith("/")) return { host: headers.host, path: url.split(/[?#]/, 1)[0]! };
  if (!/^https?:\/\//i.test(url) || !URL.canParse(url)) return undefined;
  const { host, pathname } = new URL(url);
  return { host, path: pathname };
}

/** Answers in one line of text. */
function say(
  request: IncomingMessage,
  response: ServerResponse,
  status: number,
  text: string,
  headers: Readonly<Record<string, string>> = {},
): void {
  const type = text.startsWith("<") ? "text/html; charset=utf-8" : "text/plain; charset=utf-8";
  response.writeHead(status, {
    "Content-Type": type,
    "Content-Length": Buffer.byteLength(text),
    "X-Content-Type-Options": "nosniff",
    ...headers,
  });
  response.end(request.method === "HEAD" ? undefined : text);
}

/** The listener of such a server, for a server that does more. */
export function guideListener({
  folder,
  base,
  lost = "Not found",
  names = [],
}: ServedGuide): (request: IncomingMessage, response: ServerResponse) => void {
  const page = lost.toString();
  return (request, response) => {
    const notFound = (): void => say(request, response, 404, page);
    // Who hangs up in the middle is nobody's fault.
    response.on("error", () => undefined);
    if (request.method !== "GET" && request.method !== "HEAD")
      return say(request, response, 405, "This guide is only read.\n", { Allow: ALLOWED });
    const target = targetOf(request);
    if (target === undefined) return say(request, response, 400, "That is no address.\n");
    if (!isNamed(target.host, names))
      return say(request, response, 421, "This server does not answer to that name. Say it with --host.\n");
    const { path } = target;
    if (base !== "/" && (path === "/" || path === base.slice(0, -1)))
      return say(request, response, 302, "", { Location: base });
    if (!path.startsWith(base)) return notFound();
    send(request, path.slice(base.length - 1), { root: folder, cacheControl: false, dotfiles: "ignore" })
      // A new build shows at once.
      .on("headers", (sent: ServerResponse) =>
        sent.setHeader("Cache-Control", "no-cache").setHeader("X-Content-Type-Options", "nosniff"),
      )
      .on("directory", () => say(request, response, 302, "", { Location: `${path.replace(/^\/+/, "/")}/` }))
      .on("error", ({ status = 500, headers }: { status?: number; headers?: Record<string, string> }) => {
        // The file went while it was being sent, as in a swap: whoever reads must not take the part for all of it.
        if (response.headersSent) return void response.destroy();
        for (const name of response.getHeaderNames()) response.removeHeader(name);
        if (status === 403 || status === 404) return notFound();
        say(
          request,
          response,
          status,
          status === 416 ? "That range is not in the file.\n" : "That cannot be answered.\n",
          headers,
        );
      })
      .pipe(response);
  };
}

/** A server that answers whatever it is sent; it still has to listen. */
export function guideServer(guide: ServedGuide): Server {
  const server = createServer(guideListener(guide));
  // Without a listener Node closes without a word.
  server.on("connect", (_, socket) => {
    socket.on("error", () => undefined);
    socket.end(
      `HTTP/1.1 405 Method Not Allowed\r\nAllow: ${ALLOWED}\r\nConnection: close\r\nContent-Length: 0\r\n\r\n`,
    );
  });
  return server;
}
