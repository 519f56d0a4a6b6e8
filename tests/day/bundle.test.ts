import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { beforeAll, describe, expect, it } from "vitest";
import { ensureDay } from "@/lib/ops/build-day.mjs";

const folderOf = (page: string): string => join(process.cwd(), ".build", page);
/** What a phone fetches once over a slow network: the budget of a page, kB of 1000 bytes (docs/decisions/0060). */
const MOST_KB = 80;

const filesOf = async (page: string) =>
  JSON.parse(await readFile(join(folderOf(page), "files.json"), "utf8")) as {
    readonly version: string;
    readonly script: string;
    readonly files: readonly string[];
    readonly style: string;
  };

const scriptOf = async (page: string): Promise<Buffer> => {
  const { script } = await filesOf(page);
  return readFile(join(folderOf(page), script.split("/").at(-1) ?? ""));
};

beforeAll(ensureDay, 120_000);

describe.each(["brew-day", "judging"])("the page of %s", (page) => {
  it("has no more script than a slow network carries in a moment", async () => {
    // As the server in front compresses it, with the usual level.
    expect(gzipSync(await scriptOf(page), { level: 6 }).length).toBeLessThanOrEqual(MOST_KB * 1000);
  });

  it("is kept whole: the worker names the page, every script and its style, and their version", async () => {
    const { version, script, style, files: all } = await filesOf(page);
    const worker = await readFile(join(folderOf(page), "sw.js"), "utf8");
    for (const named of [`/${page}/page`, script, style, version, ...all]) expect(worker).toContain(named);
  });

  it("has no validation library in it, which the server alone needs", async () => {
    expect((await scriptOf(page)).toString("utf8")).not.toContain("ZodError");
  });
});

describe("the page of the brew day", () => {
  it("names what comes later, and has nothing else of it", async () => {
    const script = (await scriptOf("brew-day")).toString("utf8");
    expect(script).toMatch(/import\("\/brew-day\/files\/next-reading-[0-9a-f]{12}\.js"\)/);
  });
});
