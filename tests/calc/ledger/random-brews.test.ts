import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { brew, brewWithWater, QUANTITY_IDS, type Equipment, type Ledger } from "@/lib/calc/ledger";
import { kilograms, volts } from "@/lib/calc/units";
import { days, kettles, RANDOM_BREWS, recipes } from "../../support/random-brews";
import { everyNumberOf } from "../../support/every-number-of";

// Laws that hold for every brew: no figure here is anybody's output.
const SEED = 20261125;
const runs = (share = 1): fc.Parameters<unknown> => ({
  numRuns: Math.ceil(RANDOM_BREWS * share),
  seed: SEED,
  endOnFailure: true,
});
const LONG = 60_000 + 5 * RANDOM_BREWS;

/** Closed to 1e-9 of what goes in. */
function expectClosed({ balances }: Ledger): void {
  for (const { station, in: flows, massErrorKg, extractErrorKg } of balances) {
    const massKg = flows.reduce((sum, flow) => sum + flow.kg, 0);
    const extractKg = flows.reduce((sum, flow) => sum + flow.extractKg, 0);
    expect(Math.abs(massErrorKg), station).toBeLessThanOrEqual(1e-9 * massKg);
    expect(Math.abs(extractErrorKg), station).toBeLessThanOrEqual(1e-9 * Math.max(extractKg, 1e-3));
  }
}

const brews = fc.record({ recipe: recipes, equipment: kettles, ambient: days });

describe("the ledger of any recipe on any kettle", () => {
  it(
    "has finite numbers and closed balances, or says why there is none",
    () => {
      let brewed = 0;
      fc.assert(
        fc.property(brews, (input) => {
          const outcome = brew(input);
          if (!outcome.ok) {
            expect(Number.isFinite(outcome.value)).toBe(true);
            return;
          }
          brewed++;
          expect(everyNumberOf(outcome.ledger).every(Number.isFinite)).toBe(true);
          for (const id of QUANTITY_IDS) expect(outcome.ledger.quantities[id], id).not.toBeUndefined();
          expectClosed(outcome.ledger);
        }),
        runs(),
      );
      // The random brews are not all nonsense.
      expect(brewed).toBeGreaterThan(0.4 * RANDOM_BREWS);
    },
    LONG,
  );

  it(
    "puts the volume asked for into the fermenter",
    () => {
      fc.assert(
        fc.property(brews, (input) => {
          const outcome = brew(input);
          if (!outcome.ok) return;
          const volume = outcome.ledger.quantities["fermenter.volume"] ?? 0;
          expect(Math.abs(volume / input.recipe.intoFermenter - 1)).toBeLessThan(1e-9);
        }),
        runs(),
      );
    },
    LONG,
  );
});

/** Extract in the kettle before sugars, kg, for given water; null where nothing runs off. */
function runOffExtract(input: Parameters<typeof brewWithWater>[0]): number | null {
  const outcome = brewWithWater(input);
  if (!outcome.ok) return null;
  const { quantities } = outcome.ledger;
  return (quantities["mash.dissolved"] ?? 0) - (quantities["lauter.lost"] ?? 0);
}

const waters = fc.record({
  mashWaterKg: fc.double({ min: 5, max: 40, noNaN: true }).map(kilograms),
  spargeKg: fc.double({ min: 0, max: 30, noNaN: true }).map(kilograms),
});

describe("any ledger", () => {
  it(
    "never gives less extract for more sparge water",
    () => {
      fc.assert(
        fc.property(brews, waters, fc.double({ min: 0, max: 20, noNaN: true }), (input, water, more) => {
          if (input.equipment.lauter.method === "none") return;
          const less = runOffExtract({ ...input, ...water });
          const washed = runOffExtract({ ...input, ...water, spargeKg: kilograms(water.spargeKg + more) });
          if (less !== null && washed !== null) expect(washed).toBeGreaterThanOrEqual(less * (1 - 1e-12));
        }),
        runs(),
      );
    },
    LONG,
  );

  it(
    "never heats slower on a higher voltage",
    () => {
      const onSupply = (equipment: Equipment, supply: number): Equipment => ({
        ...equipment,
        kettle: { ...equipment.kettle, supplyVoltage: volts(supply) },
      });
      fc.assert(
        fc.property(
          brews,
          waters,
          fc.double({ min: 1, max: 1.3, noNaN: true }),
          (input, { mashWaterKg, spargeKg }, times) => {
            const spared = input.equipment.lauter.method === "none" ? kilograms(0) : spargeKg;
            const water = { mashWaterKg, spargeKg: spared };
            const supply = input.equipment.kettle.supplyVoltage;
            const lower = brewWithWater({ ...input, ...water });
            const higher = brewWithWater({ ...input, ...water, equipment: onSupply(input.equipment, supply * times) });
            if (!lower.ok || !higher.ok) return;
            for (const id of ["water.heatingTime", "kettle.heatingTime"] as const) {
              const slow = lower.ledger.quantities[id];
              const fast = higher.ledger.quantities[id];
              // What stalls on the lower voltage may do so on the higher, but what heats keeps heating.
              if (slow === null) continue;
              expect(fast, id).not.toBeNull();
              expect(fast ?? 0, id).toBeLessThanOrEqual(slow * (1 + 1e-9) + 1e-9);
            }
          },
        ),
        runs(),
      );
    },
    LONG,
  );
});
