import { alkalinityFromBicarbonate, bicarbonateFromAlkalinity, calciumCarbonateFromGermanDegrees } from "../../water";
import { chargeBalance, checkAnalysis, germanDegreesFromCalciumCarbonate, hardness } from "../../water";
import { residualAlkalinity, sulfateToChloride } from "../../water";
import { ALKALINITY_RANGE, BICARBONATE_RANGE, GERMAN_DEGREES_RANGE, HARD_WATER_RANGE } from "../../water";
import { milligramsPerLitre } from "../../units";
import { fieldInput } from "./field-input";
import type { FunctionInput, FunctionRecord } from "./function-record";
import { EXAMPLE_WATER, ionInputs } from "./water-inputs";

const ion = (name: string, label: string): FunctionInput => fieldInput(name, label, milligramsPerLitre.range);

/** How the functions that judge and convert an analysis of water are explained. */
export const WATER_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "water/alkalinityFromBicarbonate",
    words:
      "Alkalinity as mg/L of calcium carbonate from bicarbonate, equivalent for equivalent. Carbonate and hydroxide are left out; below pH 8.3 there is hardly any of either.",
    equation: "alkalinity = bicarbonate × 50.043 / 61.016",
    inputs: [{ at: "0", label: "Bicarbonate", ...BICARBONATE_RANGE }],
    gives: "alkalinity, mg/L as CaCO3",
    sources: ["iupac-2021"],
    validRange: "0 to 10 000 mg/L, for waters below pH 8.3.",
    call: alkalinityFromBicarbonate,
    example: [180],
  },
  {
    id: "water/bicarbonateFromAlkalinity",
    words:
      "Bicarbonate from alkalinity as mg/L of calcium carbonate, equivalent for equivalent. The library counts all alkalinity as bicarbonate, which holds for drinking water.",
    equation: "bicarbonate = alkalinity × 61.016 / 50.043",
    inputs: [{ at: "0", label: "Alkalinity", ...ALKALINITY_RANGE }],
    gives: "bicarbonate, mg/L",
    sources: ["iupac-2021"],
    validRange: "0 to 8000 mg/L as CaCO3, for waters below pH 8.3.",
    call: bicarbonateFromAlkalinity,
    example: [150],
  },
  {
    id: "water/hardness",
    words:
      "Total hardness: calcium and magnesium together, as mg/L of calcium carbonate. Iron, strontium and other traces of hardness are left out.",
    equation: "hardness = 50.043 × (calcium / 20.039 + magnesium / 12.1525)",
    inputs: [
      fieldInput("calciumMgL", "Calcium", HARD_WATER_RANGE),
      fieldInput("magnesiumMgL", "Magnesium", HARD_WATER_RANGE),
    ],
    gives: "hardness, mg/L as CaCO3",
    sources: ["iupac-2021"],
    validRange: "0 to 1500 mg/L of each ion.",
    call: hardness,
    example: [{ calciumMgL: 80, magnesiumMgL: 12 }],
  },
  {
    id: "water/germanDegreesFromCalciumCarbonate",
    words:
      "Hardness or alkalinity in German degrees, in which most European waterworks report. A degree is 10 mg/L of calcium oxide, whatever the hardness really consists of.",
    equation: "degrees = (mg/L as CaCO3) × 56.077 / (10 × 100.086)",
    inputs: [{ at: "0", label: "Hardness or alkalinity", ...milligramsPerLitre.range, unit: "mg/L as CaCO3" }],
    gives: "hardness or alkalinity, °dH",
    sources: ["iupac-2021"],
    validRange: "0 to 10 000 mg/L as CaCO3.",
    call: germanDegreesFromCalciumCarbonate,
    example: [178.5],
  },
  {
    id: "water/calciumCarbonateFromGermanDegrees",
    words:
      "Hardness or alkalinity as mg/L of calcium carbonate from German degrees, each 10 mg/L of calcium oxide. It is exact but for the last digit of the atomic weights.",
    equation: "mg/L as CaCO3 = degrees × 10 × 100.086 / 56.077",
    inputs: [{ at: "0", label: "Hardness or alkalinity", ...GERMAN_DEGREES_RANGE }],
    gives: "hardness or alkalinity, mg/L as CaCO3",
    sources: ["iupac-2021"],
    validRange: "0 to 560 °dH.",
    call: calciumCarbonateFromGermanDegrees,
    example: [10],
  },
  {
    id: "water/residualAlkalinity",
    words:
      "The alkalinity left after calcium and magnesium have reacted with phosphates of the malt, by Kolbach's rule. He measured knocked-out wort of 12 °P, where 10 °dH more raise the pH by 0.3; in a mash the shift depends on the malts and the thickness, and mashPh counts it. Two waters of one residual alkalinity are not equal for the beer.",
    equation: "residual alkalinity = alkalinity − 50.043 × (calcium / 20.039 / 3.5 + magnesium / 12.1525 / 7)",
    inputs: [
      ion("calciumMgL", "Calcium"),
      ion("magnesiumMgL", "Magnesium"),
      { ...ion("alkalinityMgLCaCO3", "Alkalinity"), unit: "mg/L as CaCO3" },
    ],
    gives: "residual alkalinity, mg/L as CaCO3; below zero where calcium outweighs it",
    sources: ["kolbach-1953", "barth-zaman-2015"],
    validRange: "0 to 10 000 mg/L of each.",
    call: residualAlkalinity,
    example: [{ calciumMgL: 70, magnesiumMgL: 14, alkalinityMgLCaCO3: 150 }],
  },
  {
    id: "water/chargeBalance",
    words:
      "The charges of a water's positive and negative ions, which cancel in every water. A gap means an ion is wrong or was not measured. Potassium, nitrate and free acid are left out.",
    equation: "sum of mg/L × charge / molar mass on each side; error = (cations − anions) / (cations + anions)",
    inputs: ionInputs("0"),
    gives: "cations and anions, mEq/L, and their relative error",
    sources: ["standard-methods-1030", "iupac-2021"],
    validRange: "0 to 10 000 mg/L of each ion, up to 1000 mEq/L of either sign.",
    call: chargeBalance,
    example: [EXAMPLE_WATER],
  },
  {
    id: "water/checkAnalysis",
    words:
      "A verdict on an analysis of water from its charges. The standard allows 0.2 mEq/L in weak waters, 2 % in middling and 5 % in strong ones; brewers commonly ask for 5 % everywhere, which is called fair here. Reports of waterworks mix the averages of a year, so doubtful ones are common and measuring again is the remedy.",
    equation:
      "allowed = 0.2 mEq/L for anions up to 3 mEq/L, 0.02 × (cations + anions) up to 10 and 0.05 × (cations + anions) above",
    inputs: ionInputs("0"),
    gives: "sound, fair or doubtful; the side that lacks; the gap and the gap allowed, mEq/L",
    sources: ["standard-methods-1030"],
    validRange: "0 to 10 000 mg/L of each ion, up to 1000 mEq/L of either sign.",
    call: checkAnalysis,
    example: [EXAMPLE_WATER],
  },
  {
    id: "water/sulfateToChloride",
    words:
      "Sulfate over chloride by mass. Common practice takes more sulfate for drier, hoppier beer and more chloride for rounder beer. The ratio says nothing of the amounts: 20 to 10 and 400 to 200 mg/L taste very different.",
    equation: "ratio = sulfate / chloride",
    inputs: [ion("sulfate", "Sulfate"), ion("chloride", "Chloride")],
    gives: "the ratio, or that there is no chloride",
    sources: ["trade-practice"],
    validRange: "0 to 10 000 mg/L of each, with at least 0.001 mg/L of chloride.",
    call: sulfateToChloride,
    example: [{ sulfate: 150, chloride: 75 }],
  },
];
