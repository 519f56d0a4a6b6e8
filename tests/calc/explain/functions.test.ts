import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { explainFunction, FUNCTION_RECORDS } from "@/lib/calc/explain";
import { withNumber } from "@/lib/calc/explain/functions/explain-function";
import { everyNumberOf } from "../../support/every-number-of";

const SUBJECTS = readdirSync("lib/calc", { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

/** Every function that lib/calc lets others import, and nothing that is not one. */
const EXPORTED: ReadonlyMap<string, unknown> = new Map(
  (
    await Promise.all(
      SUBJECTS.map(async (subject) => {
        const found = (await import(`../../../lib/calc/${subject}/index.ts`)) as Readonly<Record<string, unknown>>;
        return Object.entries(found)
          .filter(([, value]) => typeof value === "function")
          .map(([name, value]) => [`${subject}/${name}`, value] as const);
      }),
    )
  ).flat(),
);

/** A class of error is thrown, not called. */
const isRefusal = (error: unknown): boolean => error instanceof RangeError && error.name === "OutOfRangeError";

type Outcome = { readonly kind: "refused" } | { readonly kind: "answered"; readonly value: unknown };

function callOf(record: (typeof FUNCTION_RECORDS)[number], args: readonly unknown[]): Outcome {
  try {
    const value = (record.call as (...all: readonly unknown[]) => unknown)(...args);
    const saysNo = typeof value === "object" && value !== null && "ok" in value && value.ok === false;
    return saysNo ? { kind: "refused" } : { kind: "answered", value };
  } catch (error) {
    if (isRefusal(error)) return { kind: "refused" };
    throw error;
  }
}

const anchors = new Set([...readFileSync("docs/sources.md", "utf8").matchAll(/^## (\S+)$/gm)].map((match) => match[1]));

/** Functions over the whole process brew at both ends of a hundred ranges, some of them a hundred times each. */
const BREWS_MANY_TIMES = 60_000;

describe("the records of the public functions", () => {
  it("are there for every function that the library exports, once each", () => {
    const recorded = FUNCTION_RECORDS.map((record) => record.id);
    expect(recorded.toSorted()).toEqual([...new Set(recorded)].toSorted());
    expect(recorded.toSorted()).toEqual([...EXPORTED.keys()].toSorted());
  });

  it.each(FUNCTION_RECORDS)("$id: names its own function, in words, with its sources", (record) => {
    expect(record.call).toBe(EXPORTED.get(record.id));
    expect(record.words).toMatch(/\.$/);
    expect(record.words.length).toBeGreaterThan(60);
    expect(record.equation).not.toBe("");
    expect(record.gives).not.toBe("");
    expect(record.validRange).toMatch(/\.$/);
    expect(record.sources).not.toHaveLength(0);
    for (const source of record.sources) expect(anchors, source).toContain(source);
  });

  it.each(FUNCTION_RECORDS)("$id: answers its example with finite numbers, the same ones each time", (record) => {
    const outcome = callOf(record, record.example);
    expect(outcome.kind).toBe("answered");
    if (outcome.kind === "refused") return;
    expect(everyNumberOf(outcome.value).filter((number) => !Number.isFinite(number))).toEqual([]);
    // As JSON, because a maker of quantities gives a new function each time.
    expect(JSON.stringify(callOf(record, record.example))).toBe(JSON.stringify(outcome));
  });

  it.each(FUNCTION_RECORDS)("$id: refuses what is no number or outside its range", (record) => {
    for (const { at, label, min, max } of record.inputs) {
      const beyond = [
        Number.NaN,
        min - Math.max(1e-6, Math.abs(min) * 1e-6),
        max + Math.max(1e-6, Math.abs(max) * 1e-6),
      ];
      for (const value of beyond) {
        expect(callOf(record, withNumber(record.example, at, value)).kind, `${label} ${String(value)}`).toBe("refused");
      }
    }
  });

  it.each(FUNCTION_RECORDS)(
    "$id: has no hole at the ends of its ranges",
    (record) => {
      for (const { at, label, min, max } of record.inputs) {
        for (const value of [min, max]) {
          const outcome = callOf(record, withNumber(record.example, at, value));
          if (outcome.kind === "refused") continue;
          expect(
            everyNumberOf(outcome.value).filter((each) => !Number.isFinite(each)),
            `${label} ${String(value)}`,
          ).toEqual([]);
        }
      }
    },
    BREWS_MANY_TIMES,
  );
});

describe("an explained function", () => {
  it("tells value and slope: SG rises by about 0.0042 for each °P at 12 °P (table of Plato: 1.0484 and 1.0526 at 13)", () => {
    const found = explainFunction({ id: "gravity/platoToSpecificGravity", args: [12] });
    if (!found.ok) throw new Error(found.reason);
    expect(found.explained.value).toBeCloseTo(1.0484, 4);
    const [slope] = found.explained.sensitivities;
    expect(slope?.perUnit).toBeCloseTo(0.0042, 4);
  });

  it("is not made up for a name that the library has not", () => {
    expect(explainFunction({ id: "gravity/guess" })).toEqual({ ok: false, reason: "no-such-function" });
  });

  it("refuses arguments that the function refuses", () => {
    expect(() => explainFunction({ id: "gravity/platoToSpecificGravity", args: [99] })).toThrow(/is outside/);
  });
});
