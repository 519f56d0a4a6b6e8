import "server-only";

/**
 * An array as PostgreSQL writes one in text. As one text it goes to the database as it is, where the client would look
 * at each value of an array, which for thousands of readings takes longer than to store them.
 */
export function arrayLiteral(values: readonly (string | number | null)[]): string {
  return `{${values.map(elementOf).join(",")}}`;
}

function elementOf(value: string | number | null): string {
  if (value === null) return "NULL";
  return typeof value === "number" ? String(value) : `"${escaped(value)}"`;
}

// Plain searches: most texts have neither sign, and a pattern would be sought in each.
function escaped(text: string): string {
  const safe = text.includes("\\") ? text.replaceAll("\\", "\\\\") : text;
  return safe.includes('"') ? safe.replaceAll('"', '\\"') : safe;
}
