/** Every number in a value, however deep. */
export function everyNumberOf(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(everyNumberOf) : [];
}
