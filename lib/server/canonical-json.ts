import "server-only";

/**
 * JSON with the keys of every object in order and without blanks, so that the same content has the same hash whatever
 * form or database it went through.
 */
export function canonicalJson(value: unknown): string {
  return JSON.stringify(value, (_key, part: unknown) => {
    if (typeof part !== "object" || part === null || Array.isArray(part)) return part;
    return Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)));
  });
}
