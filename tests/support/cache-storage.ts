/** The caches of a browser, in memory: as much of the service workers' Cache API as keeping a guide uses. */

const addressOf = (request: RequestInfo | URL): string => {
  const text = typeof request === "string" ? request : request instanceof URL ? request.href : request.url;
  return new URL(text, "http://cache.test").pathname;
};

class MemoryCache {
  readonly #kept = new Map<string, { readonly body: ArrayBuffer; readonly headers: Headers }>();
  readonly #room: () => boolean;

  constructor(room: () => boolean) {
    this.#room = room;
  }

  match(request: RequestInfo | URL): Promise<Response | undefined> {
    const found = this.#kept.get(addressOf(request));
    return Promise.resolve(found && new Response(found.body.slice(0), { headers: found.headers }));
  }

  async put(request: RequestInfo | URL, response: Response): Promise<void> {
    if (!this.#room()) throw new DOMException("no room", "QuotaExceededError");
    this.#kept.set(addressOf(request), { body: await response.arrayBuffer(), headers: new Headers(response.headers) });
  }

  delete(request: RequestInfo | URL): Promise<boolean> {
    return Promise.resolve(this.#kept.delete(addressOf(request)));
  }

  keys(): Promise<readonly Request[]> {
    return Promise.resolve([...this.#kept.keys()].map((path) => new Request(`http://cache.test${path}`)));
  }
}

/** @param room asked before each thing stored: false stands for a device that is full. */
export function memoryCaches(room: () => boolean = () => true): CacheStorage {
  const all = new Map<string, MemoryCache>();
  const storage = {
    open(name: string): Promise<MemoryCache> {
      const found = all.get(name) ?? new MemoryCache(room);
      all.set(name, found);
      return Promise.resolve(found);
    },
    has: (name: string): Promise<boolean> => Promise.resolve(all.has(name)),
    delete: (name: string): Promise<boolean> => Promise.resolve(all.delete(name)),
    keys: (): Promise<string[]> => Promise.resolve([...all.keys()]),
  };
  // Only what is above is ever called.
  return storage as unknown as CacheStorage;
}
