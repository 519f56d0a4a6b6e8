import { readFileSync } from "node:fs";
import { afterEach, describe, expect, it, vi } from "vitest";
import { drawableText } from "@/lib/ui/card/drawable-text";
import { linkCard } from "@/lib/ui/card/link-card";

const FONT = new URL("../../../node_modules/next/dist/compiled/@vercel/og/Geist-Regular.ttf", import.meta.url);

/** The characters of a TrueType font, from its "cmap" table in format 4 (OpenType 1.9, cmap). */
function charactersOf(font: Buffer): ReadonlySet<number> {
  const tables = Array.from({ length: font.readUInt16BE(4) }, (_, i) => 12 + 16 * i);
  const at = tables.find((record) => font.toString("latin1", record, record + 4) === "cmap") ?? 0;
  const cmap = font.readUInt32BE(at + 8);
  const found = new Set<number>();
  for (let i = 0; i < font.readUInt16BE(cmap + 2); i++) {
    const table = cmap + font.readUInt32BE(cmap + 8 + 8 * i);
    if (font.readUInt16BE(table) !== 4) continue;
    const double = font.readUInt16BE(table + 6);
    for (let segment = 0; segment < double; segment += 2) {
      const last = font.readUInt16BE(table + 14 + segment);
      const first = font.readUInt16BE(table + 16 + double + segment);
      for (let code = first; code <= last; code++) found.add(code);
    }
  }
  return found;
}

describe("drawableText", () => {
  it("leaves only what the font has, whatever is asked", () => {
    const inFont = charactersOf(readFileSync(FONT));
    const every = Array.from({ length: 0x3_0000 }, (_, code) => code).filter((code) => code < 0xd800 || code > 0xdfff);
    const drawn = drawableText(every.map((code) => String.fromCodePoint(code)).join(" "));
    expect(Array.from(drawn).filter((character) => !inFont.has(character.codePointAt(0) ?? 0))).toEqual([]);
    expect(drawn.length).toBeGreaterThan(500);
  });

  it.each([
    ["Märzen № 3 – “Żywe”", "Märzen 3 – “Żywe”"],
    ["Пиво", "Пиво"],
    ["Hop 🍺 storm", "Hop storm"],
    ["Ȯld ale", "Old ale"],
    ["麦酒", ""],
  ])("%s is drawn as “%s”", (text, drawn) => {
    expect(drawableText(text)).toBe(drawn);
  });
});

describe("the picture of a link", () => {
  const fetched = vi.spyOn(globalThis, "fetch");
  afterEach(() => {
    fetched.mockClear();
  });

  it.each(["Coal Quay Porter", "麦酒 🍺 Ȯ", "x".repeat(160)])(
    "is a PNG of 1200 × 630, drawn without a network: %s",
    async (title) => {
      const figures = [{ label: "Original gravity", text: "1.048" }];
      const answer = linkCard({ title, line: "A recipe by a member of a club", figures, colourEbc: 12 });
      const png = Buffer.from(await answer.arrayBuffer());
      // PNG, ISO/IEC 15948: signature, then IHDR with width and height.
      expect(png.subarray(0, 8).toString("hex")).toBe("89504e470d0a1a0a");
      expect(png.toString("latin1", 12, 16)).toBe("IHDR");
      expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([1200, 630]);
      expect(answer.headers.get("cache-control")).toBe("no-store");
      // The layout engine is loaded out of a data: address, which is no network.
      const asked = fetched.mock.calls.map(([address]) => String(address instanceof Request ? address.url : address));
      expect(asked.filter((address) => !address.startsWith("data:")).map((address) => address.slice(0, 80))).toEqual(
        [],
      );
    },
  );
});
