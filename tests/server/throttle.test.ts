import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { giveTurnBack, takeTurn } from "@/lib/server/throttle";

const slow = { burst: 10, intervalS: 3600 };

describe("takeTurn", () => {
  it("gives a turn back for the next one", async () => {
    const key = `test:${randomUUID()}`;
    const one = { burst: 1, intervalS: 3600 };
    expect(await takeTurn(key, one)).toBe(true);
    expect(await takeTurn(key, one)).toBe(false);
    await giveTurnBack(key, one);
    expect(await takeTurn(key, one)).toBe(true);
  });

  it("counts each key by itself", async () => {
    const [a, b] = [`test:${randomUUID()}`, `test:${randomUUID()}`];
    for (let turn = 0; turn < 10; turn += 1) expect(await takeTurn(a, slow)).toBe(true);
    expect(await takeTurn(a, slow)).toBe(false);
    expect(await takeTurn(b, slow)).toBe(true);
  });
});
