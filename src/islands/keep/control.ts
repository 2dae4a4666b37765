/**
 * Keeps the guide on this device, renews it and removes it again, wherever a page has
 * `<div data-keep hidden></div>`. Nothing is stored, and no service worker registered,
 * before the golfer asks.
 */
import * as attr from "../../contract/attributes.ts";
import type { IslandWords } from "../../words/island-words.ts";
import { islandWords } from "../island-words.ts";
import { bytesToFetch, EDITION_FILE, readEdition, type Edition } from "../../contract/edition.ts";
import type { Order, Report } from "./messages.ts";
import { shelf as openShelf } from "./shelf.ts";
import { showView, type View } from "./view.ts";

const scope = import.meta.env.BASE_URL;
/** The edition this page is of; set when the guide was built. */
const written = (name: string, without: string): string => document.documentElement.getAttribute(name) ?? without;
const [ownEdition, editionBytes] = [written(attr.edition, ""), written(attr.editionBytes, "0")];
const supported = "serviceWorker" in navigator && "caches" in globalThis;

/** Without a word from the worker for so long it is called again: browsers end workers that run long. */
const SILENCE_MILLISECONDS = 15_000;

export async function offerKeeping(places: readonly HTMLElement[]): Promise<void> {
  const { keep: words, locale } = await islandWords();
  const show = (view: View): void => places.forEach((place) => showView(place, view));
  if (!supported) return show({ line: words.faults.unsupported, actions: [] });
  const control = keeping(words, locale, show);
  await control.begin();
}

type KeepWords = IslandWords["keep"];

function keeping(words: KeepWords, locale: string, show: (view: View) => void): { begin(): Promise<void> } {
  const shelf = openShelf(scope, caches);
  let watch: ReturnType<typeof setTimeout> | undefined;
  let waiting = false;
  let wantedBytes = Number(editionBytes);

  const millions = new Intl.NumberFormat(locale, { maximumFractionDigits: 1, minimumFractionDigits: 1 });
  const sized = (bytes: number): string => words.megabytes({ number: millions.format(bytes / 1e6) });
  const fail = (fault: keyof KeepWords["faults"]): void => {
    settle();
    const line = words.faults[fault];
    show({
      line: typeof line === "string" ? line : line({ size: sized(wantedBytes) }),
      actions: [{ text: words.again, strong: true, act: () => void keep() }],
    });
  };
  const settle = (): void => {
    waiting = false;
    clearTimeout(watch);
  };
  const order = async (message: Order): Promise<void> => {
    const registration = await navigator.serviceWorker.getRegistration(scope);
    const worker = registration?.active ?? registration?.waiting ?? registration?.installing;
    worker?.postMessage(message);
  };
  const call = (): void => {
    clearTimeout(watch);
    if (!waiting) return;
    watch = setTimeout(() => {
      void order({ type: "keep" });
      call();
    }, SILENCE_MILLISECONDS);
  };

  const keep = async (): Promise<void> => {
    waiting = true;
    progress(0, wantedBytes);
    try {
      await navigator.serviceWorker.register(`${scope}sw.js`, { scope, updateViaCache: "none" });
      await navigator.serviceWorker.ready;
      // A plea, not a need: kept guides are then the last thing a full phone drops.
      await navigator.storage?.persist?.().catch(() => false);
      const { quota, usage } = (await navigator.storage?.estimate?.().catch(() => undefined)) ?? {};
      if (quota !== undefined && usage !== undefined && quota - usage < wantedBytes) return fail("full");
      await order({ type: "keep" });
      call();
    } catch (cause) {
      console.warn("Keeping the guide:", cause);
      fail(navigator.onLine ? "refused" : "network");
    }
  };
  const remove = async (): Promise<void> => {
    settle();
    await order({ type: "forget" });
    await shelf.clear();
    await (await navigator.serviceWorker.getRegistration(scope))?.unregister();
    offer(words.removed);
  };
  const progress = (doneBytes: number, bytes: number): void =>
    show({
      line: words.keeping({ done: sized(doneBytes), size: sized(bytes) }),
      share: bytes === 0 ? 0 : doneBytes / bytes,
      actions: [{ text: words.stop, act: () => void stop() }],
    });
  const stop = async (): Promise<void> => {
    if ((await shelf.current()) === undefined) return remove();
    settle();
    await order({ type: "stop" });
    await showKept();
  };
  const offer = (line: string): void =>
    show({ line, actions: [{ text: words.keep, strong: true, act: () => void keep() }] });
  const removing = { text: words.remove, act: () => void remove() };

  /** What is kept, and whether the club has a newer edition: asked only here, where somebody looks. */
  const showKept = async (): Promise<void> => {
    const kept = await shelf.current();
    if (kept === undefined) return offer(words.before({ size: sized(wantedBytes) }));
    const stale = ownEdition !== kept.edition;
    const reload = { text: words.reload, strong: true, act: () => location.reload() };
    show(
      stale
        ? { line: words.stale, actions: [reload, removing] }
        : { line: words.kept({ size: sized(kept.bytes) }), actions: [removing] },
    );
    const newest = await present();
    if (newest === undefined || newest.edition === kept.edition || waiting) return;
    wantedBytes = bytesToFetch(newest, kept);
    show({
      line: words.newer({ size: sized(wantedBytes) }),
      actions: [{ text: words.update, strong: true, act: () => void keep() }, removing],
    });
  };
  const present = async (): Promise<Edition | undefined> => {
    const response = await fetch(scope + EDITION_FILE, { cache: "no-cache" }).catch(() => undefined);
    return response?.ok ? readEdition(await response.json().catch(() => undefined)) : undefined;
  };

  const hear = (report: Report): void => {
    if (report.type === "progress") {
      waiting = true;
      call();
      wantedBytes = report.bytes;
      progress(report.doneBytes, report.bytes);
    } else if (report.type === "kept") {
      settle();
      void order({ type: "adopt", edition: ownEdition });
      void showKept();
    } else if (report.type === "failed") fail(report.fault);
    else if (!waiting) offer(words.removed);
  };

  return {
    async begin() {
      navigator.serviceWorker.addEventListener("message", ({ data }) => hear(data as Report));
      navigator.serviceWorker.startMessages();
      try {
        await showKept();
      } catch (cause) {
        console.warn("Keeping the guide:", cause);
        fail("refused");
      }
    },
  };
}
