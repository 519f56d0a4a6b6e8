import type { Asked } from "../../bench/load/http";

export interface Reply {
  readonly status: number;
  readonly headers: Headers;
  readonly text: string;
}

/** Longer than a writer waits who has somebody standing behind them. */
const TOO_LONG_MS = 10_000;

/** Asks through the bad network; null when no answer came, so that nobody knows what became of it. */
export async function ask(
  origin: string,
  { path, method = "GET", headers = {}, body }: Omit<Asked, "body"> & { readonly body?: string | FormData | undefined },
): Promise<Reply | null> {
  try {
    const response = await fetch(`${origin}${path}`, {
      ...{ method, redirect: "manual" as const, signal: AbortSignal.timeout(TOO_LONG_MS) },
      headers: { ...headers, connection: "close" },
      ...(body === undefined ? {} : { body }),
    });
    return { status: response.status, headers: response.headers, text: await response.text() };
  } catch {
    return null;
  }
}

/** What an action returned, which stands in the second line of its answer; null where the answer was cut off. */
export function returned(reply: Reply | null): { readonly status?: string; readonly data?: unknown } | null {
  if (reply?.status !== 200) return null;
  const line = reply.text.split("\n").find((each) => each.startsWith("1:{"));
  return line === undefined ? null : (parsed(line.slice(2)) as { status?: string; data?: unknown } | null);
}

/** JSON, or null: an answer without a stated length may end anywhere, and looks whole. */
export function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
