import { describe, expect, it } from "vitest";
import { adapt, intentionOf, type AdaptOutcome, type Intention, type WayOut, type WayOutKind } from "@/lib/calc/adapt";
import type { LimitId } from "@/lib/calc/ledger";
import { celsius, joulesPerKelvin, kilograms, litres, litresPerKilogram, watts, fraction } from "@/lib/calc/units";
import { brewed, brewInput, exactly, valueOf } from "../../support/brewed";
import { garageKettle, paleAle } from "../../support/brewing-fixtures";
import { expectWithin } from "../../support/expect-within";

type Changes = Parameters<typeof brewInput>[0];

const intention = intentionOf({ recipe: paleAle, ledger: brewed() });

function adapted(changes: Changes, to: Partial<Intention> = {}): Extract<AdaptOutcome, { ok: false }> {
  const { equipment, ambient } = brewInput(changes);
  const outcome = adapt({ intention: { ...intention, ...to }, equipment, ambient, hold: { intoFermenter: null } });
  if (outcome.ok) throw new Error("fits");
  return outcome;
}

const HOT_COOLANT: Changes = { equipment: { chiller: { ...garageKettle.chiller, coolant: celsius(40) } } };
const STONE_TUN: Changes = {
  mash: { kind: "tun", heatCapacity: joulesPerKelvin(26_000) },
  ambient: { air: celsius(0), grain: celsius(0) },
};
const SMALL_FERMENTER: Changes = {
  equipment: { fermenter: { ...garageKettle.fermenter, capacity: litres(20), headspace: litres(4) } },
};
const UNHEATED_TUN: Changes = { mash: { kind: "tun", heated: false, grainLimit: null }, lauter: { method: "batch" } };

/** Each breaks one limit of the fixture's kettle, which keeps them all. */
const BREAKERS: readonly (readonly [limit: LimitId, changes: Changes, to?: Partial<Intention>])[] = [
  ["grain basket", { mash: { grainLimit: kilograms(4) } }],
  ["mash volume", { mash: { capacity: litres(16) } }],
  ["mash thickness", {}, { thickness: litresPerKilogram(2) }],
  ["strike water", STONE_TUN],
  [
    "strike volume",
    {
      kettle: { capacity: litres(29), headspace: litres(0) },
      mash: { kind: "tun", capacity: litres(60), grainLimit: null },
      lauter: { method: "none", absorption: exactly(litresPerKilogram(1.2)) },
    },
  ],
  ["element covered", { kettle: { minimum: litres(18) } }],
  ["boil volume", { kettle: { capacity: litres(25) } }],
  ["heater reaches the boil", { kettle: { ratedPower: watts(400) } }],
  ["heater holds the boil", { kettle: { ratedPower: watts(1000) } }],
  ["mash steps", UNHEATED_TUN],
  ["chilling", HOT_COOLANT],
  ["fermenter", SMALL_FERMENTER],
];

const outcomes = BREAKERS.map(([limit, changes, to]) => ({ limit, outcome: adapted(changes, to) }));

/** Too strong for the basket, the kettle or both. */
const STRONG = adapted({}, { originalExtract: 22 });

const everyWay = [...outcomes.map(({ outcome }) => outcome), STRONG].flatMap(({ waysOut }) => waysOut);

const kinds = (ways: readonly WayOut[]): WayOutKind[] => ways.map(({ kind }) => kind);

describe("each limit of a kettle", () => {
  it.each(BREAKERS)("is named where it alone is broken: %s", (limit) => {
    const found = outcomes.find((each) => each.limit === limit);
    const broken = found?.outcome.reasons.map(({ id }) => id) ?? [];
    // A heater that does not reach the boil does not hold one either.
    const along = limit === "heater reaches the boil" ? ["heater holds the boil"] : [];
    expect(broken).toEqual([limit, ...along]);
    for (const reason of found?.outcome.reasons ?? []) {
      expect(reason.ok).toBe(false);
      expect(reason.side === "at most" ? reason.value > reason.bound : reason.value < reason.bound).toBe(true);
    }
  });

  it("has a way out where amounts can help, and none where only another heater or chiller can", () => {
    const without = outcomes.filter(({ outcome }) => outcome.waysOut.length === 0).map(({ limit }) => limit);
    expect(without).toEqual(["heater reaches the boil", "heater holds the boil", "chilling"]);
  });
});

describe("every way out", () => {
  it("keeps every limit and is ranked by its distance", () => {
    for (const { waysOut } of [...outcomes.map(({ outcome }) => outcome), STRONG]) {
      const distances = waysOut.map(({ distance }) => distance);
      expect(distances).toEqual([...distances].sort((one, other) => one - other));
      expect(Math.min(...distances, 1)).toBeGreaterThan(0);
    }
    for (const { kind, ledger } of everyWay) {
      expect(
        ledger.limits.filter(({ ok }) => !ok).map(({ id }) => id),
        kind,
      ).toEqual([]);
    }
  });

  it("meets strength and bitterness by addition to a millionth", () => {
    for (const { kind, ledger, recipe } of everyWay) {
      const wanted = STRONG.waysOut.some((way) => way.ledger === ledger) ? 22 : intention.originalExtract;
      expectWithin(valueOf(ledger, "fermenter.originalExtract") / wanted, 1, 1e-6);
      expectWithin(valueOf(ledger, "fermenter.volume") / recipe.intoFermenter, 1, 1e-6);
      ledger.hops.forEach((hop, i) => {
        const target = intention.hops[i]?.ibu ?? null;
        if (target !== null) expectWithin(hop.ibu / target, 1, 1e-6);
        else expect(hop.ibu, kind).toBe(0);
      });
    }
  });

  it("says by its figure what it does", () => {
    for (const { kind, figure, ledger, recipe, times } of everyWay) {
      const said: Partial<Record<WayOutKind, number>> = {
        "less volume": valueOf(ledger, "fermenter.volume"),
        "more volume": valueOf(ledger, "fermenter.volume"),
        "water after the boil": valueOf(ledger, "water.topUp"),
        "thicker mash": recipe.thickness ?? 0,
        "thinner mash": recipe.thickness ?? 0,
        "fewer rests": recipe.mash.length,
        "gentler steps": recipe.mash.at(-1)?.celsius ?? 0,
        "one rest instead": recipe.mash[0]?.celsius ?? 0,
        "two mashes": recipe.mashes,
        "longer boil": recipe.boil,
        "split batch": times,
      };
      const expected = said[kind];
      if (expected !== undefined) expectWithin(figure, expected, 1e-6 * expected);
      expect(times > 1, kind).toBe(kind === "split batch");
    }
  });

  it("of each kind is found somewhere", () => {
    expect([...new Set(kinds(everyWay))].sort()).toEqual([
      "fewer rests",
      "gentler steps",
      "less volume",
      "longer boil",
      "malt extract for part of the grist",
      "more volume",
      "one rest instead",
      "split batch",
      "sugar for part of the grist",
      "thicker mash",
      "thinner mash",
      "two mashes",
      "water after the boil",
    ]);
  });
});

describe("sugar for part of the grist", () => {
  const wayOf = (kind: WayOutKind, of: Extract<AdaptOutcome, { ok: false }>): WayOut => {
    const found = of.waysOut.find((way) => way.kind === kind);
    if (found === undefined) throw new Error(`no ${kind}: ${kinds(of.waysOut).join(", ")}`);
    return found;
  };
  const tight = adapted({ mash: { grainLimit: kilograms(4.7) } });
  const sugar = wayOf("sugar for part of the grist", tight);
  const extract = wayOf("malt extract for part of the grist", tight);

  it("fills the basket to its limit with the rest, and joins the sugar that is there", () => {
    expectWithin(valueOf(sugar.ledger, "mash.grist"), 4.7, 0.001 * 4.7);
    expect(sugar.recipe.fermentables).toHaveLength(4);
    expect(sugar.recipe.fermentables[3]?.kg ?? 0).toBeGreaterThan(0.2);
    expect(extract.recipe.fermentables).toHaveLength(5);
  });

  it("ferments further than malt extract would, which the ledger shows", () => {
    const attenuation = (way: WayOut): number => valueOf(way.ledger, "fermenter.attenuation");
    expect(attenuation(sugar)).toBeGreaterThan(attenuation(extract) + 0.005);
    expect(valueOf(sugar.ledger, "package.alcohol")).toBeGreaterThan(valueOf(extract.ledger, "package.alcohol"));
  });

  it("is further from what was meant than malt extract, share for share", () => {
    expectWithin(sugar.distance / sugar.figure, 0.9, 1e-9);
    expectWithin(extract.distance / extract.figure, 0.6, 1e-9);
  });

  it("is at most a fifth of the extract", () => {
    expect(kinds(adapted({ mash: { grainLimit: kilograms(4) } }).waysOut)).not.toContain("sugar for part of the grist");
    const share = sugar.ledger.fermentables[3]?.share ?? 1;
    expect(share).toBeLessThanOrEqual(0.2 + 1e-9);
    // Another fifth is sugar already: nothing is left to add.
    const sweeter = (to: number): Partial<Intention> => ({
      fermentables: intention.fermentables.map((row, i) => {
        const more = to - (intention.fermentables[3]?.share ?? 0);
        return { ...row, share: fraction(row.share + (i === 3 ? more : i === 0 ? -more : 0)) };
      }),
    });
    const basketOf = (kg: number): Changes => ({ mash: { grainLimit: kilograms(kg) } });
    // By its yield 1 % of sugar saves about 0.054 kg of the 5.15 kg of malt, of which a fifth of sugar leaves 4.36 kg.
    expect(kinds(adapted(basketOf(4.2), sweeter(0.2)).waysOut)).not.toContain("sugar for part of the grist");
    expect(kinds(adapted(basketOf(4.2), sweeter(0.15)).waysOut)).not.toContain("sugar for part of the grist");
    expect(kinds(adapted(basketOf(4.5), sweeter(0.15)).waysOut)).toContain("sugar for part of the grist");
  });
});
