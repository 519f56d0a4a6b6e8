import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canonicalJson } from "@/lib/server/canonical-json";

/** The definition: hashes that are stored were made by it. */
function defined(value: unknown): string {
  return JSON.stringify(value, (_key, part: unknown) => {
    if (typeof part !== "object" || part === null || Array.isArray(part)) return part;
    return Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)));
  });
}

describe("canonicalJson", () => {
  it("is what JSON says with the keys in order, of anything that a request or a row can hold", () => {
    const key = fc.oneof(
      fc.string(),
      fc.integer({ min: 0, max: 120 }).map(String),
      fc.constantFrom("__proto__", "toString"),
    );
    const anything = fc.anything({ key, withDate: true, withNullPrototype: false, maxDepth: 4 });
    const objects = fc.object({ key, withDate: true, maxDepth: 4 });
    fc.assert(
      fc.property(fc.oneof(objects, anything.filter(isJson)), (value) => canonicalJson(value) === defined(value)),
      {
        numRuns: 2000,
      },
    );
  });

  it("is the same for the same content in another order", () => {
    expect(canonicalJson({ b: [1, { d: null, c: undefined }], a: "é" })).toBe('{"a":"é","b":[1,{"d":null}]}');
    expect(canonicalJson({ "10": 1, "9": 2, a: 3 })).toBe('{"9":2,"10":1,"a":3}');
  });
});

function isJson(value: unknown): boolean {
  try {
    return typeof defined(value) === "string";
  } catch {
    return false;
  }
}
