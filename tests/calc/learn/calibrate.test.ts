import { describe, expect, it } from "vitest";
import { brewEvidence, calibrate, type BrewEvidence, type LearnedFigure } from "@/lib/calc/learn";
import { FIGURES, type Equipment, type FigureName } from "@/lib/calc/ledger";
import { brewed, brewInput, valueOf } from "../../support/brewed";
import { tellingOf } from "../../support/telling-of";
import { expectPrinted } from "../../support/expect-printed";

const { equipment } = brewInput();

function figureOf(figures: readonly LearnedFigure[], name: FigureName): LearnedFigure {
  const figure = figures.find((each) => each.name === name);
  if (figure === undefined) throw new Error(`no ${name}`);
  return figure;
}

/** The kettle with one uncertain figure; all others are as they are. */
function onlyUncertain(name: FigureName): Equipment {
  return FIGURES.reduce(
    (made, place) => (place.name === name ? made : place.withFigure(made, { ...place.of(made), sd: 0 })),
    equipment,
  );
}

const VOLUMES = ["kettle.preBoil", "kettle.preBoilGravity", "kettle.postBoil", "fermenter.volume"] as const;

describe("calibrate", () => {
  it("learns a boil-off from two brews as on paper (docs/worked-examples.md#boil-off-of-two-brews)", () => {
    const brews = [tellingOf("kettle.boilOff", 2.7, 0.4), tellingOf("kettle.boilOff", 2.8, 0.4 / 1.5)];
    const boilOff = figureOf(calibrate({ equipment, brews }).figures, "kettle.boilOff");
    expectPrinted(boilOff.value, "2.624");
    expectPrinted(boilOff.standardError, "0.1872");
    expectPrinted(boilOff.figure.sd, "0.2286");
    expect(boilOff).toMatchObject({ brews: 2, trend: null, figure: { from: "learned", count: 2 } });
  });

  it("finds the figure that made the readings when these are exact", () => {
    const known = onlyUncertain("kettle.boilOff");
    // The plan pours for 2.4 kg/h; what boils off beyond is missing in hot litres of nearly water, 0.9584 kg/L.
    const readings = (["kettle.preBoil", "kettle.postBoil"] as const).map((quantity) => ({
      quantity,
      value: valueOf(brewed(), quantity) - (quantity === "kettle.postBoil" ? lostTo(2.9) : 0),
      sd: 0.02,
    }));
    const outcome = brewEvidence({ ...brewInput(), equipment: known, readings });
    if (!outcome.ok) throw new Error(outcome.reason);
    const boilOff = figureOf(calibrate({ equipment: known, brews: [outcome.evidence] }).figures, "kettle.boilOff");
    expect(Math.abs(boilOff.value - 2.9)).toBeLessThan(2 * boilOff.standardError);
  });

  it("leaves a profile as it is without brews, and a figure that no brew tells of with them", () => {
    expect(calibrate({ equipment, brews: [] }).equipment).toEqual(equipment);
    const { figures } = calibrate({ equipment, brews: [evidenceOf(1.02)] });
    const chiller = figureOf(figures, "chiller.conductance");
    expect(chiller.brews).toBe(0);
    expect(chiller.figure).toBe(equipment.chiller.conductance);
  });

  it("does not mind the order of the brews, nor that they were kept as JSON", () => {
    const brews = [evidenceOf(1.02), evidenceOf(0.97), evidenceOf(1.05)];
    const one = calibrate({ equipment, brews }).figures;
    const other = calibrate({
      equipment,
      brews: JSON.parse(JSON.stringify(brews.toReversed())) as BrewEvidence[],
    }).figures;
    one.forEach(({ value, standardError }, i) => {
      expect(other[i]?.value).toBeCloseTo(value, 9);
      expect(other[i]?.standardError).toBeCloseTo(standardError, 9);
    });
  });

  it("knows what trub and hoses keep together better than either, and says that they are tied", () => {
    const { figures, correlations } = calibrate({ equipment, brews: [evidenceOf(1.02), evidenceOf(1.01)] });
    const [trub, transfer] = [figureOf(figures, "kettle.trub"), figureOf(figures, "kettle.transfer")];
    const tied = correlations.find(({ one, other }) => one === "kettle.trub" && other === "kettle.transfer");
    expect(tied?.coefficient).toBeLessThan(0);
    const together =
      trub.figure.sd ** 2 +
      transfer.figure.sd ** 2 +
      2 * (tied?.coefficient ?? 0) * trub.figure.sd * transfer.figure.sd;
    expect(together).toBeLessThan(trub.figure.sd ** 2 + transfer.figure.sd ** 2);
  });

  it("keeps a figure within what it can be, and its error above nothing", () => {
    const brews = [tellingOf("lauter.bypass", -0.4, 0.05), tellingOf("kettle.heatShare", 1.3, 0.01)];
    const { figures } = calibrate({ equipment, brews });
    for (const name of ["lauter.bypass", "kettle.heatShare"] as const) {
      const { value, standardError } = figureOf(figures, name);
      expect(value).toBeGreaterThanOrEqual(0);
      expect(value).toBeLessThanOrEqual(1);
      expect(standardError).toBeGreaterThan(0);
    }
  });

  it("lets a brew that cannot be right count less", () => {
    const right = Array.from({ length: 5 }, () => tellingOf("kettle.boilOff", 2.5, 0.1));
    const wrong = tellingOf("kettle.boilOff", 6, 0.1);
    const { brews, figures } = calibrate({ equipment, brews: [...right, wrong] });
    expect(brews.slice(0, 5).map(({ weight }) => weight)).toEqual([1, 1, 1, 1, 1]);
    expect(brews[5]?.weight).toBeLessThan(0.1);
    expect(figureOf(figures, "kettle.boilOff").value).toBeLessThan(2.7);
  });

  it("sees a trend: 0.05 kg/h more with each brew, to its own error", () => {
    const brews = Array.from({ length: 9 }, (_, i) => tellingOf("kettle.boilOff", 2.2 + 0.05 * i, 0.05));
    const { trend } = figureOf(calibrate({ equipment, brews }).figures, "kettle.boilOff");
    expect(trend?.perBrew).toBeCloseTo(0.05, 6);
    // Each has 0.05² + 0.12² and the squares of the places add up to 60.
    expect(trend?.standardError).toBeCloseTo(Math.sqrt(0.0169 / 60), 6);
  });

  it("refuses evidence whose numbers do not belong together", () => {
    const brews = [{ ...tellingOf("kettle.boilOff", 2.4, 0.1), pull: [] }];
    expect(() => calibrate({ equipment, brews })).toThrow("pulls of a brew 0 is outside 1 to 1");
  });
});

/** Litres, hot, that a rate of boil-off takes beyond the planned one in an hour. */
const lostTo = (rate: number): number => (rate - 2.4) / 0.9584;

function evidenceOf(factor: number): BrewEvidence {
  const ledger = brewed();
  const readings = VOLUMES.map((quantity) => ({ quantity, value: factor * valueOf(ledger, quantity), sd: 0.3 }));
  const outcome = brewEvidence({ ...brewInput(), readings });
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome.evidence;
}
