import { describe, expect, it } from "vitest";
import { linearScale, niceSpan, niceTicks } from "@/lib/ui/linear-scale";

describe("linearScale", () => {
  it("puts the ends on the ends and the middle in the middle", () => {
    const scale = linearScale([10, 20], [300, 100]);
    expect([scale(10), scale(15), scale(20)]).toEqual([300, 200, 100]);
  });

  it("puts a span without width in the middle", () => {
    expect(linearScale([5, 5], [0, 100])(5)).toBe(50);
  });
});

describe("niceTicks", () => {
  it("takes round steps inside the span", () => {
    expect(niceTicks([0, 100], 5)).toEqual([0, 20, 40, 60, 80, 100]);
    expect(niceTicks([1.012, 1.048], 4)).toEqual([1.02, 1.03, 1.04]);
  });

  it("gives one tick for a span without width", () => {
    expect(niceTicks([3, 3], 5)).toEqual([3]);
  });
});

describe("niceSpan", () => {
  it("contains every value and ends on round ones", () => {
    expect(niceSpan([18.3, 66.9], 5)).toEqual([10, 70]);
  });

  it("opens a span around a single value, and has one without values", () => {
    expect(niceSpan([20, 20], 5)).toEqual([19, 21]);
    expect(niceSpan([], 5)).toEqual([0, 1]);
  });
});
