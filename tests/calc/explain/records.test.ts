import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { QUANTITIES, QUANTITY_IDS, type QuantityId } from "@/lib/calc/ledger";
import { EXPLAINED_BREWS, explanationOf, type ExplainedBrew } from "../../support/explained-brews";

const CASES = Object.entries(EXPLAINED_BREWS).map(([name, brew]) => ({
  name,
  brew,
  explanations: QUANTITY_IDS.map((id) => explanationOf(id, brew)),
}));

const anchors = new Set([...readFileSync("docs/sources.md", "utf8").matchAll(/^## (\S+)$/gm)].map((match) => match[1]));

// A full stop inside a number ends no sentence.
const sentencesIn = (words: string): number => words.split(/[.!?](?:\s|$)/).filter((part) => part !== "").length;

describe("the explanation of every number", () => {
  it.each(CASES)("$name: says in two to four sentences what it is", ({ explanations }) => {
    for (const { id, words, equation, validRange } of explanations) {
      expect(sentencesIn(words), id).toBeGreaterThanOrEqual(2);
      expect(sentencesIn(words), id).toBeLessThanOrEqual(4);
      expect(equation, id).not.toBe("");
      expect(validRange, id).toMatch(/\.$/);
    }
  });

  it.each(CASES)("$name: shows the value of the ledger and names its kind", ({ brew, explanations }) => {
    for (const { id, value, label, dimension } of explanations) {
      expect(value, id).toBe(brew.ledger.quantities[id]);
      expect({ label, dimension }, id).toEqual({ label: QUANTITIES[id].label, dimension: QUANTITIES[id].dimension });
    }
  });

  it.each(CASES)("$name: takes inputs that are finite, or in the ledger as they stand", ({ brew, explanations }) => {
    for (const { id, value, inputs } of explanations) {
      for (const input of inputs) {
        const named = `${id}: ${input.label}`;
        if (input.quantity === undefined) {
          if (value !== null) expect(Number.isFinite(input.value), named).toBe(true);
        } else {
          expect(input.value, named).toBe(brew.ledger.quantities[input.quantity]);
          expect(input.label, named).toBe(QUANTITIES[input.quantity].label);
        }
        if (input.dimension !== null) expect(input.unit, named).toBe("");
      }
    }
  });

  it.each(CASES)("$name: tells inputs of one name apart", ({ explanations }) => {
    for (const { id, inputs } of explanations) {
      const labels = inputs.map((input) => input.label);
      expect(new Set(labels).size, id).toBe(labels.length);
    }
  });

  it.each(CASES)("$name: offers at most three changes, each of which changes the number", ({ explanations }) => {
    for (const { id, value, whatIf } of explanations) {
      expect(whatIf.length, id).toBeLessThanOrEqual(3);
      for (const line of whatIf) expect(line.value, `${id}: ${line.change}`).not.toBe(value);
      expect(new Set(whatIf.map((line) => line.change)).size, id).toBe(whatIf.length);
    }
  });

  it.each(QUANTITY_IDS)("%s cites sources that stand in the list of sources", (id) => {
    const { sources } = explanationOf(id);
    expect(sources.length).toBeGreaterThan(0);
    for (const { anchor, title } of sources) {
      expect(anchors).toContain(anchor);
      expect(title).not.toBe("");
    }
  });

  it.each(QUANTITY_IDS)("%s of the pale ale has inputs, and at least one change to look at", (id) => {
    const { inputs, whatIf } = explanationOf(id);
    expect(inputs.length).toBeGreaterThan(0);
    expect(whatIf.length).toBeGreaterThan(0);
  });
});

describe("walking back through the inputs", () => {
  it.each(CASES)("$name: never comes back to where it was", ({ explanations }) => {
    const links = new Map(explanations.map((each) => [each.id, each.inputs.flatMap((input) => input.quantity ?? [])]));
    const finished = new Set<QuantityId>();
    const walk = (id: QuantityId, path: readonly QuantityId[]): void => {
      expect(path, `${[...path, id].join(" → ")} runs in a circle`).not.toContain(id);
      if (finished.has(id)) return;
      for (const next of links.get(id) ?? []) walk(next, [...path, id]);
      finished.add(id);
    };
    for (const id of QUANTITY_IDS) walk(id, []);
  });

  it("ends at something decided or measured", () => {
    const inputsOf = new Map(CASES[0]?.explanations.map((each) => [each.id, each.inputs]));
    const ends = (id: QuantityId): boolean =>
      inputsOf.get(id)?.some((input) => input.quantity === undefined || ends(input.quantity)) ?? false;
    for (const id of QUANTITY_IDS) expect(ends(id), id).toBe(true);
  });

  it("says of a figure how it came to be known, and from how many brews", () => {
    const brew = EXPLAINED_BREWS["pale ale, poured over a basket"];
    const { equipment } = brew;
    const boilOff = { ...equipment.kettle.boilOff, from: "learned" as const, count: 4 };
    const learned = { ...brew, equipment: { ...equipment, kettle: { ...equipment.kettle, boilOff } } };
    const origin = (of: ExplainedBrew): string | undefined =>
      explanationOf("kettle.evaporated", of).inputs.find((input) => input.label === "Boil-off of this kettle")?.from;
    expect(origin(brew)).toBe("stated");
    expect(origin(learned)).toBe("learned, from 4 brews");
  });
});
