import fc from "fast-check";
import { expect, it } from "vitest";
import { isSame } from "@/lib/ui/is-same";

it("takes a copy for the same, and a copy with one more field or another number not", () => {
  fc.assert(
    fc.property(fc.jsonValue(), fc.string(), (value, name) => {
      const copy: unknown = JSON.parse(JSON.stringify(value));
      expect(isSame(JSON.parse(JSON.stringify(value)), copy)).toBe(true);
      expect(isSame({ [name]: 1, value }, { [name]: 2, value: copy })).toBe(name === "value");
      expect(isSame({ value }, { value: copy, more: 0 })).toBe(false);
    }),
  );
});

it("tells a list from an object, and null from nothing", () => {
  expect(isSame([], {})).toBe(false);
  expect(isSame({ a: null }, {})).toBe(false);
  expect(isSame({ a: undefined }, {})).toBe(true);
  expect(isSame(NaN, NaN)).toBe(true);
});
