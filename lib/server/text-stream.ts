import "server-only";

/** A text that is sent while it is being written; whoever stops reading stops the writing. */
export function streamOf(text: AsyncIterable<string> | Iterable<string>): ReadableStream<Uint8Array> {
  const encoder = new TextEncoder();
  const parts = Symbol.asyncIterator in text ? text[Symbol.asyncIterator]() : text[Symbol.iterator]();
  return new ReadableStream({
    async pull(controller) {
      const part = await parts.next();
      if (part.done === true) controller.close();
      else controller.enqueue(encoder.encode(part.value));
    },
    async cancel() {
      await parts.return?.();
    },
  });
}
