import { describe, expect, it } from "vitest";
import { readLines } from "@/lib/ui/kettles/read-lines";

async function linesOf(...parts: readonly Uint8Array[]): Promise<string[]> {
  const stream = new ReadableStream<Uint8Array>({
    start(controller) {
      for (const part of parts) controller.enqueue(part);
      controller.close();
    },
  });
  const lines: string[] = [];
  for await (const some of readLines(stream)) lines.push(...some);
  return lines;
}

const bytes = (text: string) => new TextEncoder().encode(text);

describe("lines of a stream", () => {
  it("are put together again however the stream was cut, also within a letter of two bytes", async () => {
    const whole = bytes("first\nsecond: Kölsch\nthird\n");
    for (let cut = 0; cut <= whole.length; cut++) {
      expect(await linesOf(whole.slice(0, cut), whole.slice(cut))).toEqual(["first", "second: Kölsch", "third"]);
    }
  });

  it("include a last one without an end", async () => {
    expect(await linesOf(bytes("a\nb"))).toEqual(["a", "b"]);
    expect(await linesOf()).toEqual([]);
  });
});
