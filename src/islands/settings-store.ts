/**
 * This device's memory for the golfer's choices. Storage may be refused altogether (private windows,
 * policy); then choices last for the page.
 */

export function stored(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

/** @param value undefined forgets */
export function store(key: string, value: string | undefined): void {
  try {
    if (value === undefined) localStorage.removeItem(key);
    else localStorage.setItem(key, value);
  } catch {
    // Nothing to do: the choice still holds on this page.
  }
}
