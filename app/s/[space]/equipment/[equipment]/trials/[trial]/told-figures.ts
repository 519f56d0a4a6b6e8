import type { ExplanationInput } from "@/lib/calc/explain";
import type { Estimate, Scatter } from "@/lib/calc/learn";
import type { Dimension, Equipment } from "@/lib/calc/ledger";
import { boilsAt } from "@/lib/model/trial/run-inputs";
import type { TrialPart } from "@/lib/model/trial/trial-entry";
import { chillBasis, statedVessel, type DeadSpaceWhere, type TrialResults } from "@/lib/model/trial/trial-results";

/** A figure that the trial tells by now, and what its explanation needs. */
export interface ToldFigure {
  readonly label: string;
  readonly estimate: Estimate;
  readonly dimension: Dimension;
  /** The function of the library that computed it. */
  readonly functionId: string;
  readonly inputs: readonly ExplanationInput[];
}

const input = (label: string, value: number, dimension: Dimension | null, unit = ""): ExplanationInput => ({
  ...{ label, value, dimension, unit },
});

function scatterInputs(count: number, scatter: Scatter): readonly ExplanationInput[] {
  return [
    input("Readings", count, null),
    ...(scatter.df === 0
      ? []
      : [
          input("Squared residuals over the uncertainties, χ²", scatter.chiSquared, null),
          input("Readings more than unknowns", scatter.df, null),
        ]),
    ...(scatter.widened > 1
      ? [input("Uncertainty widened, as the readings scatter more than stated, by", scatter.widened, null, "times")]
      : []),
  ];
}

/** The figures of one part, where they are told. */
export function toldFigures(
  part: TrialPart,
  results: TrialResults,
  { equipment, where }: { readonly equipment: Equipment; readonly where: DeadSpaceWhere },
): readonly ToldFigure[] {
  switch (part) {
    case "heating":
    case "cooling":
      return heatingFigures(results, equipment);
    case "boil-off":
      return boilOffFigures(results, equipment);
    case "chill":
      return chillFigures(results, equipment);
    case "dead space":
      return deadSpaceFigures(results, where);
    case "marks":
      return [];
  }
}

function heatingFigures({ heating }: TrialResults, equipment: Equipment): readonly ToldFigure[] {
  const found = heating?.outcome;
  if (heating === null || found?.ok !== true) return [];
  const inputs = [
    ...scatterInputs(heating.count, found.scatter),
    input("Boiling point at this altitude", boilsAt(equipment), "temperature"),
    input("Heat capacity of the vessel, as stated", statedVessel(equipment).value, "heatCapacity"),
    input("Its uncertainty", statedVessel(equipment).sd, "heatCapacity"),
  ];
  const of = (label: string, estimate: Estimate | null, dimension: Dimension): readonly ToldFigure[] =>
    estimate === null ? [] : [{ label, estimate, dimension, functionId: "learn/commissionHeating", inputs }];
  return [
    ...of("Power that reaches the water", found.power, "power"),
    ...of("Heat loss", found.lossCoefficient, "heatLoss"),
    ...of("Heat capacity of the vessel", found.vesselHeatCapacity, "heatCapacity"),
  ];
}

function boilOffFigures({ boilOff }: TrialResults, equipment: Equipment): readonly ToldFigure[] {
  const found = boilOff?.outcome;
  if (boilOff === null || found?.ok !== true) return [];
  const functionId = "learn/commissionBoilOff";
  const inputs = [
    ...scatterInputs(boilOff.count, found.scatter),
    input("Boiling point at this altitude", boilsAt(equipment), "temperature"),
  ];
  return [
    { label: "Boil-off", estimate: found.rate, dimension: "evaporation", functionId, inputs },
    { label: "Power in the steam", estimate: found.steamPower, dimension: "power", functionId, inputs },
  ];
}

function chillFigures({ chill, heating }: TrialResults, equipment: Equipment): readonly ToldFigure[] {
  const found = chill?.outcome;
  if (chill === null || found?.ok !== true) return [];
  const label = "Heat transfer of the chiller";
  if ("coolantOutC" in found) {
    const inputs = [input("Cooling water as it leaves, by the balance", found.coolantOutC, "temperature")];
    const functionId = "learn/commissionCounterflow";
    return [{ label, estimate: found.conductance, dimension: "heatLoss", functionId, inputs }];
  }
  const { vesselHeatCapacity, lossCoefficient } = chillBasis(equipment, heating?.outcome ?? null);
  const inputs = [
    ...scatterInputs(chill.count, found.scatter),
    input("Heat capacity of the vessel", vesselHeatCapacity.value, "heatCapacity"),
    input("Heat loss of the kettle", lossCoefficient.value, "heatLoss"),
  ];
  return [{ label, estimate: found.conductance, dimension: "heatLoss", functionId: "learn/commissionChill", inputs }];
}

function deadSpaceFigures({ deadSpace }: TrialResults, where: DeadSpaceWhere): readonly ToldFigure[] {
  const here = deadSpace[where];
  if (here?.outcome?.ok !== true) return [];
  const { volume, scatter } = here.outcome;
  const inputs = scatterInputs(here.count, scatter);
  const functionId = "learn/commissionDeadSpace";
  return [{ label: "Left behind, at 20 °C", estimate: volume, dimension: "volume", functionId, inputs }];
}
