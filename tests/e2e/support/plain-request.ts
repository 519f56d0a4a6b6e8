/** One request without a browser, and what came back of it. */
export interface Asked {
  readonly method: string;
  readonly path: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: BodyInit;
}

export interface Answered {
  readonly status: number;
  readonly headers: Headers;
  readonly text: string;
}

const AT_ONCE = 6;

/** Asks once, follows nothing, and hangs up on a stream that has no end. */
export async function ask(origin: string, { method, path, headers = {}, body }: Asked): Promise<Answered> {
  const answer = await fetch(origin + path, { method, headers, body: body ?? null, redirect: "manual" }).catch(
    (cause: unknown) => {
      throw new Error(`${method} ${path} got no answer`, { cause });
    },
  );
  const isEndless = answer.headers.get("content-type")?.startsWith("text/event-stream") === true;
  if (isEndless) await answer.body?.cancel();
  return { status: answer.status, headers: answer.headers, text: isEndless ? "" : await answer.text() };
}

/** Does something with each of many, a few at a time, and gives back in order what became of them. */
export async function forEachOf<T, R>(many: readonly T[], work: (one: T) => Promise<R>): Promise<readonly R[]> {
  const results: R[] = [];
  const left = [...many.entries()];
  const worker = async (): Promise<void> => {
    for (let next = left.shift(); next !== undefined; next = left.shift()) {
      const [at, one] = next;
      results[at] = await work(one);
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
  return results;
}
