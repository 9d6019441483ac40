/** The element with that id; the pages are built with the scripts, so that it is there. */
export function byId<E extends HTMLElement = HTMLElement>(id: string): E {
  const found = document.getElementById(id);
  if (!found) throw new Error(`this page has no #${id}`);
  return found as E;
}

/** The theme that a reader chose on the pages of the reference; the same holds here. */
export function takeTheme(): void {
  const chosen = remembered('tsd-theme');
  if (chosen === 'dark' || chosen === 'light') document.documentElement.dataset['theme'] = chosen;
}

/** What this browser remembers under a name, if it may remember anything. */
export function remembered(name: string): string | undefined {
  try {
    return localStorage.getItem(name) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Remembers a choice for the next page, if the browser may. */
export function remember(name: string, choice: string): void {
  try {
    localStorage.setItem(name, choice);
  } catch {
    // Where nothing may be stored, the choice holds for this page.
  }
}

/** Makes an element with attributes and contents. */
export function element<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Readonly<Record<string, string>> = {},
  ...contents: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  made.append(...contents);
  return made;
}
