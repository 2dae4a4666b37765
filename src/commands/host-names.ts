/** Which names a server on somebody's own machine answers to. */
import { isIP } from "node:net";
import { hostname } from "node:os";

const bare = (host: string): string => host.toLowerCase().replace(/\.$/, "");

const isLocalhost = (name: string): boolean => name === "localhost" || name.endsWith(".localhost");

/** Without its port; an IPv6 address without its brackets. */
function nameOf(host: string): string {
  const bracketed = /^\[([^\]]*)\](?::\d*)?$/.exec(host);
  return bare(bracketed ? bracketed[1]! : host.replace(/:\d*$/, ""));
}

/**
 * Whether a request's Host is this machine's own and not a name that some website pointed
 * at it (DNS rebinding). An address in figures cannot be pointed anywhere, and RFC 6761
 * keeps localhost from it.
 *
 * @param names that stand for this machine besides.
 */
export function isNamed(host: string | undefined, names: readonly string[]): boolean {
  if (host === undefined) return false;
  const name = nameOf(host);
  return isIP(name) !== 0 || isLocalhost(name) || names.map(bare).includes(name);
}

/** Whether only this machine reaches what listens there. */
export const isLoopback = (host: string): boolean =>
  isLocalhost(bare(host)) || host.startsWith("127.") || host === "::1";

/** What this machine is called in its own network. */
export const ownNames = (): string[] => [hostname(), `${hostname().split(".")[0]}.local`];
