import { randomUUID } from "node:crypto";
import { describe, expect, it, vi } from "vitest";
import { directory, type Directory } from "@/lib/server/db";
import { giveTurnBack, takeTurn } from "@/lib/server/throttle";

const slow = { burst: 10, intervalS: 3600 };

/** The database as another server of ours sees it: through a client and a pool of its own. */
async function anotherServer(): Promise<Directory> {
  // The client is kept on the global object while modules come and go.
  delete (globalThis as { gylebookClients?: unknown }).gylebookClients;
  vi.resetModules();
  return (await import("@/lib/server/db")).directory;
}

describe("takeTurn", () => {
  it("lets exactly the burst through of 200 simultaneous tries from two servers", async () => {
    const other = await anotherServer();
    expect(other === directory).toBe(false);
    for (let trial = 0; trial < 3; trial += 1) {
      const key = `test:${randomUUID()}`;
      const tries = Array.from({ length: 200 }, (_, n) => takeTurn(key, slow, n % 2 === 0 ? directory : other));
      expect((await Promise.all(tries)).filter((taken) => taken)).toHaveLength(10);
    }
    await other.$disconnect();
  });

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
