import { describe, expect, it } from "vitest";
import { adapt, intentionOf, type AdaptOutcome, type WayOutKind } from "@/lib/calc/adapt";
import { brewed, brewInput } from "../../support/brewed";
import { paleAle } from "../../support/brewing-fixtures";

const { equipment, ambient } = brewInput({});
// Too strong for the basket of the fixture's kettle.
const intention = { ...intentionOf({ recipe: paleAle, ledger: brewed() }), originalExtract: 22 };

function misfit(ways?: readonly WayOutKind[]): Extract<AdaptOutcome, { ok: false }> {
  const task = { intention, equipment, ambient, hold: { intoFermenter: null } };
  const outcome = adapt(ways === undefined ? task : { ...task, ways });
  if (outcome.ok) throw new Error("fits");
  return outcome;
}

describe("ways out that are asked for by name", () => {
  const all = misfit();

  it("are all searched where nobody names any", () => {
    expect(all.waysOut.length).toBeGreaterThan(2);
  });

  it("are none where none is named, and the misfit is the same", () => {
    const none = misfit([]);
    expect(none).toEqual({ ...all, waysOut: [] });
  });

  it.each(all.waysOut.map((way) => way.kind))("come out alone as they do among the others: %s", (kind) => {
    const expected = all.waysOut.find((way) => way.kind === kind);
    expect(misfit([kind]).waysOut).toEqual([expected]);
  });

  it("are not made up where a change does not help", () => {
    // One rest already: there is none to leave out.
    expect(misfit(["fewer rests"]).waysOut).toEqual([]);
  });
});
