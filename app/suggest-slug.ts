const LONGEST = 40;

/** An address made of a name: its letters without accents, words joined by hyphens. */
export function suggestSlug(name: string): string {
  return name
    .normalize("NFKD")
    .replaceAll(/\p{Mark}/gu, "")
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .slice(0, LONGEST)
    .replaceAll(/^-+|-+$/g, "");
}
