/** What a language calls itself: `Deutsch` for `de`; its tag where nobody knows. */
export function languageName(tag: string): string {
  const name = new Intl.DisplayNames([tag], { type: "language", languageDisplay: "standard" }).of(tag) ?? tag;
  // Some languages write their own name small; as a link's text it stands alone.
  return name.charAt(0).toLocaleUpperCase(tag) + name.slice(1);
}
