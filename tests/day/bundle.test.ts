import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { beforeAll, describe, expect, it } from "vitest";
import { ensureDay } from "@/lib/ops/build-day.mjs";

const FOLDER = join(process.cwd(), ".build", "brew-day");
/** What a phone fetches once over a slow network: the budget of the page, kB of 1000 bytes (docs/decisions/0041). */
const MOST_KB = 130;

const files = async () =>
  JSON.parse(await readFile(join(FOLDER, "files.json"), "utf8")) as {
    readonly version: string;
    readonly script: string;
    readonly files: readonly string[];
    readonly style: string;
  };

beforeAll(ensureDay, 120_000);

describe("the page of the brew day", () => {
  it("has no more script than a slow network carries in a moment", async () => {
    const { script } = await files();
    const built = await readFile(join(FOLDER, script.split("/").at(-1) ?? ""));
    // As the server in front compresses it, with the usual level.
    expect(gzipSync(built, { level: 6 }).length).toBeLessThanOrEqual(MOST_KB * 1000);
    // What comes later is named, and nothing else of it is in here.
    expect(built.toString("utf8")).toMatch(/import\("\/brew-day\/files\/next-reading-[0-9a-f]{12}\.js"\)/);
  });

  it("is kept whole: the worker names the page, every script and its style, and their version", async () => {
    const { version, script, style, files: all } = await files();
    const worker = await readFile(join(FOLDER, "sw.js"), "utf8");
    for (const named of ["/brew-day/page", script, style, version, ...all]) expect(worker).toContain(named);
  });

  it("has no validation library in it, which the server alone needs", async () => {
    const { script } = await files();
    const built = await readFile(join(FOLDER, script.split("/").at(-1) ?? ""), "utf8");
    expect(built).not.toContain("ZodError");
  });
});
