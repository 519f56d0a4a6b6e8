import { celsius, ebc, ph } from "../../units";
import { ALKALINE_PH_RANGE, CARBONATE_TEMPERATURE_RANGE, alkalinityNeutralised } from "../../water";
import {
  carbonateConstants,
  carbonateFractions,
  maltAcidity,
  maltKindFromColour,
  mashPhAtTemperature,
} from "../../water";
import { HOT_PH_RANGE, ROOM_PH_RANGE } from "../../water/mash-ph-at-temperature";
import { fieldInput } from "./field-input";
import type { FunctionRecord } from "./function-record";

const warmth = fieldInput("celsius", "Temperature of the water", CARBONATE_TEMPERATURE_RANGE);
const colour = fieldInput("colour", "Colour of the malt", ebc.range);

/** How the carbonate system and the acidity of malts are explained. */
export const WATER_PH_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "water/carbonateConstants",
    words:
      "The constants by which carbon dioxide, bicarbonate, carbonate and calcite balance in water, by fits over temperature. They hold for pure water; the salts of a usual brewing water shift them by some 0.05.",
    equation:
      "log K1 = −356.3094 − 0.06091964 T + 21834.37/T + 126.8339 log T − 1684915/T²; log K2 = −107.8871 − 0.03252849 T + 5151.79/T + 38.92561 log T − 563713.9/T²; log KH = 108.3865 + 0.01985076 T − 6919.53/T − 40.45154 log T + 669365/T²; log Kcalcite = −171.9065 − 0.077993 T + 2839.319/T + 71.595 log T; T in kelvin",
    inputs: [{ ...warmth, at: "0" }],
    gives: "pK1, pK2, pKH and pK of calcite",
    sources: ["plummer-busenberg-1982"],
    validRange: "0 to 90 °C.",
    call: carbonateConstants,
    example: [25],
  },
  {
    id: "water/carbonateFractions",
    words:
      "How dissolved carbon is shared between carbon dioxide, bicarbonate and carbonate at a pH. It is why alkalinity is used up in a mash: at pH 5.4 nine tenths are carbon dioxide. Activities are taken as concentrations.",
    equation: "b = 10^(pH − pK1), c = b × 10^(pH − pK2); shares 1, b and c over 1 + b + c",
    inputs: [fieldInput("ph", "pH", ph.range), warmth],
    gives: "shares of carbon dioxide, bicarbonate and carbonate",
    sources: ["plummer-busenberg-1982"],
    validRange: "pH 0 to 14, 0 to 90 °C.",
    call: carbonateFractions,
    example: [{ ph: 5.4, celsius: 25 }],
  },
  {
    id: "water/alkalinityNeutralised",
    words:
      "The share of a water's alkalinity that is gone when its pH has been brought down, while all carbon dioxide stays dissolved. Where carbon dioxide escapes, as from hot and stirred water, all of the alkalinity is used up. Rules that count alkalinity in full are a tenth too high for a still mash.",
    equation:
      "share = 1 − (bicarbonate + 2 carbonate at the second pH) / (the same at the first), shares of the carbon",
    inputs: [
      fieldInput("fromPh", "pH before", ALKALINE_PH_RANGE),
      fieldInput("toPh", "pH after", ALKALINE_PH_RANGE),
      warmth,
    ],
    gives: "share of the alkalinity; below zero where alkalinity has to be added",
    sources: ["plummer-busenberg-1982"],
    validRange: "pH 4.3 to 12 before and after, 0 to 90 °C.",
    call: alkalinityNeutralised,
    example: [{ fromPh: 8, toPh: 5.4, celsius: 25 }],
  },
  {
    id: "water/mashPhAtTemperature",
    words:
      "The pH that a mash has while hot. By convention a mash pH is meant at room temperature; common practice says it reads 0.3 lower at 65 °C, and a straight line through that is used. A meter that compensates for temperature corrects its electrode and not the mash, so cool the sample: hot wort also wears the glass and scalds.",
    equation: "pH hot = pH at 20 °C − 0.3 × (t − 20) / 45, t in °C",
    inputs: [
      fieldInput("ph", "pH at room temperature", ROOM_PH_RANGE),
      fieldInput("celsius", "Temperature of the mash", HOT_PH_RANGE),
    ],
    gives: "pH at the temperature of the mash",
    sources: ["trade-practice"],
    validRange: "20 to 80 °C.",
    call: mashPhAtTemperature,
    example: [{ ph: 5.4, celsius: celsius(65) }],
  },
  {
    id: "water/maltAcidity",
    words:
      "A guess at how a malt buffers, from its kind and colour, for when the maltster gives no figures. The values are common practice and from memory: published titrations were not readable, malts of one kind differ by 0.1 to 0.2, and some handbooks put dark roasted malts as low as 4.0 to 4.5. Acidulated malt is a pale malt that carries 2 % of lactic acid; the rule that 1 % of it takes 0.1 off the pH is for weakly buffered mashes, and this balance gives about 0.06.",
    equation: "straight lines between rows of colour, distilled-water pH and buffering for each kind; flat beyond them",
    inputs: [colour],
    gives: "distilled-water pH, buffering in mEq/(kg·pH), lactic acid, and their standard deviations",
    sources: ["trade-practice", "troester-2009"],
    validRange: "0 to 4000 EBC.",
    call: maltAcidity,
    example: [{ kind: "caramel", colour: 120 }],
  },
  {
    id: "water/maltKindFromColour",
    words:
      "The kind that a fermentable is taken for when only its class and colour are known, with the other kinds of that colour. Wheat and barley, or caramel malt and malt kilned dark, cannot be told apart by colour, and acidulated malt looks like pale malt. Where the name says otherwise, the name decides.",
    equation: "malt: base below 9 EBC, Munich below 35, caramel below 450, roasted from there; grain: raw below 450",
    inputs: [colour],
    gives: "the kind, and the others it could be",
    sources: ["trade-practice"],
    validRange: "0 to 4000 EBC.",
    call: maltKindFromColour,
    example: [{ kind: "malt", colour: 120 }],
  },
];
