import "server-only";

/** The identifier that an event states, which may be anything, to answer for it; empty where it states none. */
export function identifierOf(event: unknown): string {
  const id: unknown = typeof event === "object" && event !== null && "id" in event ? event.id : null;
  return typeof id === "string" ? id.slice(0, 64) : "";
}
