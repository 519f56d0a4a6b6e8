import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { equipmentInput } from "@/lib/model/equipment";
import { proposalsOf } from "@/lib/model/trial/proposals";
import { trialEntry, type TrialEntry } from "@/lib/model/trial/trial-entry";
import { trialRuns } from "@/lib/model/trial/trial-log";
import { trialResults } from "@/lib/model/trial/trial-results";
import { sampleEquipment } from "../support/sample-recipe";
import { courseOf, entryOf } from "../support/trial-entries";

const equipment = equipmentInput.parse({
  ...sampleEquipment(),
  chiller: { ...sampleEquipment().chiller, kind: "immersion" },
});
const read = (entries: readonly object[]): readonly TrialEntry[] => entries.map((entry) => trialEntry.parse(entry));

describe("the entries of a trial", () => {
  it("say the same in whatever order they come, however often", () => {
    const wrong = entryOf({ value: 24 });
    const [first, second] = [entryOf({ value: 42, replaces: wrong.id }), entryOf({ value: 43, replaces: wrong.id })];
    const other = entryOf({ part: "chill", value: 60 });
    const gone = entryOf({ part: "chill", value: 70 });
    const { id, run, occurredAt } = { ...entryOf({}), run: 1, occurredAt: "2026-11-07T10:00:00Z" };
    const taken = { id, run, occurredAt, part: "chill", kind: "void", payload: {}, replaces: gone.id };
    const all = read([wrong, first, second, other, gone, taken]);
    const expected = trialRuns(all);
    expect(
      expected.map((each) => [
        each.part,
        each.readings.map(({ entry }) => entry.kind !== "void" && "value" in entry && entry.value),
      ]),
    ).toEqual([
      ["heating", [43]],
      ["chill", [60]],
    ]);
    const byPart = (runs: ReturnType<typeof trialRuns>) => runs.toSorted((a, b) => (a.part < b.part ? -1 : 1));
    fc.assert(
      fc.property(fc.shuffledSubarray([...all, ...all], { minLength: 2 * all.length }), (shuffled) => {
        expect(byPart(trialRuns(shuffled))).toEqual(byPart(expected));
      }),
    );
  });

  it("are refused by what they are: a temperature by its range, a part by what it takes", () => {
    const refusal = (entry: object): string =>
      trialEntry
        .safeParse(entry)
        .error?.issues.map(({ message }) => message)
        .join() ?? "";
    expect(refusal(entryOf({ value: 140 }))).toBe("Temperature 140 °C is outside 0 to 102 °C");
    expect(refusal(entryOf({ part: "boil-off" }))).toBe("boil-off has no entry of the kind temperature");
    expect(refusal(entryOf({ occurredAt: "yesterday" }))).toBe("Time of the reading is not a time");
    expect(refusal(entryOf({ occurredAt: "1999-01-01T00:00:00Z" }))).toBe(
      "Time of the reading is before the year 2000",
    );
  });
});

describe("the results of a trial", () => {
  const boil = (minute: number, litresLeft: number) =>
    entryOf({
      ...{ part: "boil-off", kind: "volume", value: litresLeft, payload: { celsius: 100, sd: 0.1 } },
      occurredAt: new Date(Date.parse("2026-11-07T12:00:00Z") + 60_000 * minute).toISOString(),
    });

  it("hold the worked boil: 30 to 27 hot litres in an hour are 2.875 kg/h", () => {
    const results = trialResults(trialRuns(read([boil(0, 30), boil(60, 27)])), equipment);
    expect(results.boilOff?.outcome).toMatchObject({ ok: true, rate: { value: expect.closeTo(2.875, 3) as number } });
    const [proposal] = proposalsOf({ results, equipment, day: "7 Nov 2026" });
    expect(proposal).toMatchObject({
      figure: "kettle.boilOff",
      basis: "commissioning trial of 7 Nov 2026, 2 readings",
    });
    expect(proposal?.apply(equipment).kettle.boilOff).toMatchObject({ from: "measured", count: 1 });
  });

  it("warn when more heat arrives than the heater draws: 3.6 kW from one of 3 kW", () => {
    const known = { powerW: 3600, lossWPerK: 8, vesselJPerK: 5000 };
    const up = courseOf({ ...known, part: "heating", fromC: 15, minutes: [0, 10, 20, 30, 40] });
    const down = courseOf({ ...known, part: "cooling", fromC: 90, minutes: [0, 30, 60] });
    const results = trialResults(trialRuns(read([...up, ...down])), equipment);
    const share = proposalsOf({ results, equipment, day: "7 Nov 2026" }).find(
      ({ figure }) => figure === "kettle.heatShare",
    );
    expect(share?.after.value).toBe(1);
    expect(share?.doubt).toContain("More heat arrived than the heater draws");
  });

  it("give a dead space of the kettle with the doubt that wort leaves more", () => {
    const left = { part: "dead space", kind: "volume", value: 1.2, payload: { celsius: 20, sd: 0.05 } };
    const results = trialResults(trialRuns(read([entryOf(left)])), equipment);
    const [trub] = proposalsOf({ results, equipment, day: "7 Nov 2026" });
    expect(trub).toMatchObject({ figure: "kettle.trub", doubt: expect.stringContaining("trub and hops") as string });
  });
});
