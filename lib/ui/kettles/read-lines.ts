/** The lines of a text that comes in parts, as many at a time as a part completes. */
export async function* readLines(stream: ReadableStream<Uint8Array>): AsyncGenerator<readonly string[]> {
  const reader = stream.getReader();
  const decoder = new TextDecoder();
  let rest = "";
  for (;;) {
    const { value, done } = await reader.read();
    rest += done ? decoder.decode() : decoder.decode(value, { stream: true });
    const lines = rest.split("\n");
    rest = lines.pop() ?? "";
    if (lines.length > 0) yield lines;
    if (done) break;
  }
  if (rest !== "") yield [rest];
}
