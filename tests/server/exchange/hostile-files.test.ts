import { describe, expect, it } from "vitest";
import { FILE_LIMITS } from "@/lib/model/exchange/file-node";
import { readRecipeFile } from "@/lib/server/exchange/read-file";
import { beerJsonFile, beerXmlFile, bytesOf, changedBeerXml } from "../../support/exchange-files";

const reading = (text: string) => () => readRecipeFile(bytesOf(text), null);

const LAUGHS = `<?xml version="1.0"?>
<!DOCTYPE RECIPES [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;"><!ENTITY c "&b;&b;&b;&b;&b;&b;&b;&b;">]>
<RECIPES><RECIPE><NAME>&c;</NAME></RECIPE></RECIPES>`;

const OUTSIDE = `<!DOCTYPE RECIPES [<!ENTITY x SYSTEM "file:///etc/hostname">]>
<RECIPES><RECIPE><NAME>&x;</NAME></RECIPE></RECIPES>`;

describe("a hostile file is refused in words", () => {
  it.each([
    ["entities that multiply", LAUGHS, /document type \(DOCTYPE\) is not taken/],
    ["an entity from outside", OUTSIDE, /document type \(DOCTYPE\) is not taken/],
    ["an entity of its own", "<RECIPES><RECIPE><NAME>&beer;</NAME></RECIPE></RECIPES>", /no well-formed XML/],
    ["XML that does not end", "<RECIPES><RECIPE>", /no well-formed XML/],
    ["XML nested without end", `${"<A>".repeat(100)}${"</A>".repeat(100)}`, /more than 24 levels deep/],
    ["JSON nested without end", `${'{"a":'.repeat(100_000)}1`, /more than 24 levels deep/],
    ["lists nested without end", '{"a":' + "[".repeat(100_000), /more than 24 levels deep/],
    ["a key that stands twice", '{"beerjson":{"version":2.06,\n"version":3}}', /Line 2: “version” stands twice/],
    ["a key that all objects inherit", '{"beerjson":{"__proto__":{"isAdmin":true}}}', /“__proto__” is no name/],
    ["a tag that all objects inherit", "<RECIPES><__proto__/></RECIPES>", /“__proto__” is no name/],
    ["NaN", '{"beerjson":{"version":NaN}}', /“NaN}}” is no value of JSON/],
    ["a number without bounds", '{"beerjson":{"version":1e999}}', /1e999 is too large a number/],
    ["something after the end", '{"beerjson":{"version":3}} {}', /more after the end/],
    [
      "many attributes",
      `<RECIPES ${Array.from({ length: 20 }, (_, i) => `a${String(i)}="1"`).join(" ")}/>`,
      /attributes/,
    ],
    ["nothing", "  ", /The file is empty/],
    ["a picture", "\u0089PNG", /neither BeerJSON/],
    ["other JSON", '{"recipes":[]}', /not BeerJSON/],
    ["other XML", "<html/>", /outermost tag is not RECIPES/],
    ["no recipe", '{"beerjson":{"version":3,"recipes":[]}}', /no recipe in this file/],
  ])("%s", (_what, text, words) => {
    expect(reading(text)).toThrow(words);
  });

  it("what is larger than the limit, before it is read", () => {
    expect(() => readRecipeFile(new Uint8Array(FILE_LIMITS.bytes + 1), null)).toThrow("larger than 2 MB");
  });

  it("more recipes than one import takes", () => {
    const recipes = Array.from({ length: 501 }, () => ({}));
    expect(reading(JSON.stringify({ beerjson: { version: 3, recipes } }))).toThrow("501 recipes");
  });

  it("and changes nothing that all objects share", () => {
    expect(reading('{"beerjson":{"constructor":{"prototype":{"polluted":1}}}}')).toThrow("no name of a field");
    expect("polluted" in {}).toBe(false);
  });

  it("a full file of two megabytes is read within seconds", () => {
    const one = JSON.parse(new TextDecoder().decode(beerJsonFile())) as { readonly beerjson: { recipes: unknown[] } };
    const [recipe] = one.beerjson.recipes;
    const count = Math.floor(FILE_LIMITS.bytes / JSON.stringify(recipe).length) - 1;
    one.beerjson.recipes = Array.from({ length: count }, () => recipe);
    const started = performance.now();
    expect(readRecipeFile(bytesOf(JSON.stringify(one)), null).recipes).toHaveLength(count);
    expect(performance.now() - started).toBeLessThan(20_000);
  });
});

describe("the encoding of a file", () => {
  const titleOf = (bytes: Uint8Array) => readRecipeFile(bytes, null).recipes[0]?.title;
  const named = new TextDecoder().decode(beerXmlFile()).replace("Invented lock porter", "Märzenähnliches");
  const utf16 = (mark: readonly number[], isLittle: boolean): Uint8Array => {
    const bytes = new Uint8Array(2 * named.length);
    const view = new DataView(bytes.buffer);
    for (let i = 0; i < named.length; i += 1) view.setUint16(2 * i, named.charCodeAt(i), isLittle);
    return new Uint8Array([...mark, ...bytes]);
  };

  it("is what an XML file says of itself", () => {
    expect(titleOf(Uint8Array.from(named, (letter) => letter.charCodeAt(0)))).toBe("Märzenähnliches");
  });

  it("is UTF-8 with or without a byte order mark", () => {
    const utf8 = bytesOf(named.replace("ISO-8859-1", "UTF-8"));
    expect(titleOf(utf8)).toBe("Märzenähnliches");
    expect(titleOf(new Uint8Array([0xef, 0xbb, 0xbf, ...utf8]))).toBe("Märzenähnliches");
  });

  it.each([
    ["little", [0xff, 0xfe], true],
    ["big", [0xfe, 0xff], false],
  ] as const)("is UTF-16 with a %s-endian mark", (_which, mark, isLittle) => {
    expect(titleOf(utf16(mark, isLittle))).toBe("Märzenähnliches");
  });

  it("is Latin-1 where nothing is said and it is no UTF-8", () => {
    const bare = named.replace(/<\?xml[^>]*\?>/, "");
    expect(titleOf(Uint8Array.from(bare, (letter) => letter.charCodeAt(0)))).toBe("Märzenähnliches");
  });

  it("is refused where the file is not in what it says", () => {
    const lying = Uint8Array.from(named.replace("ISO-8859-1", "UTF-8"), (letter) => letter.charCodeAt(0));
    expect(() => titleOf(lying)).toThrow("it is in UTF-8, and it is not");
    expect(() => titleOf(changedBeerXml("ISO-8859-1", "EBCDIC-CP-DK"))).toThrow("EBCDIC-CP-DK");
  });
});
