/** `npm run serve`: the built guide on this machine, from the path it was built for. */
import { readFile } from "node:fs/promises";
import type { Server } from "node:http";
import { networkInterfaces } from "node:os";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { readRecord } from "../site/build/build-record.ts";
import { guideServer } from "./guide-server.ts";
import { isLoopback, ownNames } from "./host-names.ts";
import { CommandError, EXIT_CODES, readOptions, runCommand } from "./options.ts";
import { recover } from "./swap.ts";

const USAGE = `Usage: npm run serve -- [options]
  --out DIR     folder of the built guide (default: dist)
  --port N      port to listen on (default: the first free one from 4321)
  --host NAME   name or address to listen on (default: localhost; 0.0.0.0 for other machines)`;

const FIRST_PORT = 4321;
const PORTS_TRIED = 100;

/** Whether the server listens now; false when the port is taken. */
function listen(server: Server, port: number, host: string): Promise<boolean> {
  return new Promise((done, fail) => {
    const failed = (error: NodeJS.ErrnoException): void => {
      if (error.code === "EADDRINUSE" || error.code === "EACCES") done(false);
      else
        fail(
          new CommandError(
            `--host is ${JSON.stringify(host)}: this machine has no such name or address. Leave it out, or write --host 0.0.0.0 for other machines.`,
          ),
        );
    };
    server.once("error", failed);
    server.listen(port, host, () => {
      server.off("error", failed);
      done(true);
    });
  });
}

async function listenOnFree(server: Server, asked: number | undefined, host: string): Promise<number> {
  if (asked !== undefined) {
    if (await listen(server, asked, host)) return asked;
    throw new CommandError(
      `Port ${asked} is taken or not allowed. Write another with --port, or leave it out to take the first free one.`,
    );
  }
  for (let port = FIRST_PORT; port < FIRST_PORT + PORTS_TRIED; port++)
    if (await listen(server, port, host)) return port;
  throw new CommandError(
    `No port from ${FIRST_PORT} to ${FIRST_PORT + PORTS_TRIED - 1} is free. Write one with --port.`,
  );
}

const isEverywhere = (host: string): boolean => host === "0.0.0.0" || host === "::";

const shownHost = (host: string): string => (host.includes(":") ? `[${host}]` : host);

/** What it means to listen beyond loopback. */
function beyondThisMachine(host: string, port: number, base: string): string {
  const addresses = isEverywhere(host)
    ? Object.values(networkInterfaces())
        .flatMap((found) => found ?? [])
        .filter(({ internal, family }) => !internal && family === "IPv4")
        .map(({ address }) => address)
    : [];
  return [
    `Everybody who reaches this machine on port ${port} can read the guide, unencrypted, until you stop it: every device in the same network, and more where a router lets them in.`,
    ...addresses.map((address) => `For them it is at http://${address}:${port}${base}`),
    "Keeping it on a phone needs https. To publish, copy the folder to a web host instead.",
  ].join("\n");
}

await runCommand(async () => {
  const options = readOptions(
    process.argv.slice(2),
    { out: { type: "string" }, port: { type: "string" }, host: { type: "string" }, help: { type: "boolean" } },
    USAGE,
  );
  if (options.help) {
    console.log(`${USAGE}\n${EXIT_CODES}`);
    return;
  }
  const out = options.out === undefined ? fileURLToPath(new URL("../../dist", import.meta.url)) : resolve(options.out);
  const port = options.port === undefined ? undefined : Number(options.port);
  if (port !== undefined && !(Number.isInteger(port) && port > 0 && port < 65_536)) {
    throw new CommandError(
      `--port is ${JSON.stringify(options.port)}: expected a number from 1 to 65535.\n\n${USAGE}`,
    );
  }
  await recover(out);
  const record = await readRecord(out);
  if (record === undefined) throw new CommandError(`There is no built guide in ${out}. Run: npm run build`);
  const { base } = record;
  const host = options.host ?? "localhost";
  const lost = await readFile(join(out, "404.html")).catch(() => "Not found");
  const server = guideServer({ folder: out, base, lost, names: [host, ...ownNames()] });
  const taken = await listenOnFree(server, port, host);
  console.log(`The guide is at http://${isEverywhere(host) ? "localhost" : shownHost(host)}:${taken}${base}`);
  if (!isLoopback(host)) console.log(beyondThisMachine(host, taken, base));
  console.log("Press Ctrl+C to stop.");
  for (const signal of ["SIGINT", "SIGTERM"] as const) {
    process.once(signal, () => {
      server.close();
      server.closeAllConnections();
    });
  }
});
