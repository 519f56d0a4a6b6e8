import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../../", import.meta.url));
const read = (path: string): string => readFileSync(root + path, "utf8");

const FILES = readdirSync(`${root}lib`, { recursive: true, encoding: "utf8" })
  .map((path) => `lib/${path.replaceAll("\\", "/")}`)
  .filter((path) => /\.tsx?$/.test(path));
const ANCHORS = new Set(Array.from(read("docs/sources.md").matchAll(/^## (\S+)$/gm), (match) => match[1]));

/** The functions that a subject's index hands out, by file. */
function publicFunctions(): { readonly file: string; readonly name: string; readonly comment: string }[] {
  return FILES.filter((file) => /^lib\/calc\/[^/]+\/index\.ts$/.test(file)).flatMap((index) => {
    const folder = index.slice(0, -"index.ts".length);
    return Array.from(read(index).matchAll(/export \{([^}]*)\} from "\.\/([\w-]+)"/g)).flatMap(([, names, module]) => {
      const file = `${folder}${module ?? ""}.ts`;
      const text = read(file);
      return (names ?? "")
        .split(",")
        .map((name) => name.trim())
        .flatMap((name) => {
          const at = text.indexOf(`export function ${name}(`);
          const before = at < 0 ? text.indexOf(`export function ${name}<`) : at;
          if (name === "" || before < 0) return [];
          const comment = text.slice(text.lastIndexOf("/**", before), before);
          return [{ file, name, comment }];
        });
    });
  });
}

describe("the sources of the library", () => {
  it("are all on the page of sources", () => {
    const missing = FILES.flatMap((file) =>
      Array.from(read(file).matchAll(/docs\/sources\.md#([\w-]+)/g), (match) => match[1] ?? "")
        .filter((anchor) => !ANCHORS.has(anchor))
        .map((anchor) => `${file}: ${anchor}`),
    );
    expect(missing).toEqual([]);
  });

  it("stand in the comment of every public function", () => {
    const functions = publicFunctions();
    expect(functions.length).toBeGreaterThan(80);
    const without = functions
      // A unit is made by definition and has nothing to cite.
      .filter(({ name, comment }) => name !== "defineQuantity" && !comment.includes("@source"))
      .map(({ file, name }) => `${file}: ${name}`);
    expect(without).toEqual([]);
  });

  it("are cited on the page once each, in the order of the alphabet", () => {
    const anchors = Array.from(read("docs/sources.md").matchAll(/^## (.+)$/gm), (match) => match[1] ?? "");
    expect(anchors).toEqual([...new Set(anchors)].sort());
  });
});
