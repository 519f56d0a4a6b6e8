import type { Connection } from "./day-session";

/** What is safe on the server and what is on this device only, in one sentence. */
export function safetyWords(
  count: number,
  connection: Connection,
  { one, many }: { readonly one: string; readonly many: string },
): string {
  const isAway = connection === "unreachable";
  if (count === 0)
    return isAway ? "No network. Everything so far is safe on the server." : "Everything is safe on the server.";
  const entries = count === 1 ? `1 ${one} is` : `${String(count)} ${many} are`;
  return `${isAway ? "No network. " : ""}${entries} on this device only.`;
}
