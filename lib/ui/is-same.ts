/** Whether two plain values say the same; a field that is undefined is as good as one that is missing. */
export function isSame(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (!isObject(one) || !isObject(other) || Array.isArray(one) !== Array.isArray(other)) return false;
  return [...new Set([...Object.keys(one), ...Object.keys(other)])].every((key) => isSame(one[key], other[key]));
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}
