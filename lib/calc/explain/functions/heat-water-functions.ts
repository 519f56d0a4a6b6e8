import {
  airPressure,
  boilingPoint,
  boilingPointElevation,
  ELEVATION_RANGE,
  elementPower,
  EVAPORATION_RANGE,
  evaporationFlux,
  LATENT_HEAT_RANGE,
  latentHeat,
  maltHeatCapacity,
  RATED_VOLTAGE_RANGE,
  SATURATION_RANGE,
  saturationPressure,
  slakingRise,
  WORT_HEAT_RANGE,
  wortHeatCapacity,
} from "../../heat";
import { fraction, metres, metresPerSecond, volts, watts } from "../../units";
import { fieldInput } from "./field-input";
import type { FunctionRecord } from "./function-record";

/** The table of malt ends here. */
const MOISTURE = { unit: "%", min: 0, max: 8 } as const;

const ALTITUDE = [fieldInput("altitudeM", "Altitude", metres.range)];

/** How the properties of water, steam, wort and malt are explained, and what an element draws. */
export const HEAT_WATER_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "heat/airPressure",
    words:
      "The mean pressure of the air at an altitude, by the standard atmosphere. The weather moves it by some 2 % either way, which is half a kelvin of the boiling point.",
    equation: "pressure = 101.325 × (1 − 2.25577e-5 × altitude)^5.25588",
    inputs: ALTITUDE,
    gives: "pressure, kPa",
    sources: ["iso-2533-1975"],
    validRange: "−450 to 6000 m.",
    call: airPressure,
    example: [{ altitudeM: 500 }],
  },
  {
    id: "heat/boilingPoint",
    words:
      "The temperature at which water boils at an altitude: where its vapour pressure is the pressure of the air. Wort boils a fraction of a kelvin hotter.",
    equation: "boiling point = 1730.63 / (8.07131 − log10 of the air pressure in mmHg) − 233.426",
    inputs: ALTITUDE,
    gives: "temperature, °C",
    sources: ["iso-2533-1975", "antoine-water"],
    validRange: "−450 to 6000 m; below sea level the vapour pressure reaches 1.5 K past its span.",
    call: boilingPoint,
    example: [{ altitudeM: 500 }],
  },
  {
    id: "heat/boilingPointElevation",
    words:
      "By how much wort boils hotter than water, by the law of dilute solutions. The extract is taken as a sugar of two rings, near the mean of wort's sugars and dextrins; strong wort really rises a little more.",
    equation: "elevation = 0.512 × 1000 × extract / (342.3 × (100 − extract))",
    inputs: [{ at: "0", label: "Extract", ...ELEVATION_RANGE }],
    gives: "elevation, K",
    sources: ["crc-handbook"],
    validRange: "0 to 35 °P.",
    call: boilingPointElevation,
    example: [12],
  },
  {
    id: "heat/latentHeat",
    words:
      "The heat that turns a kilogram of water into steam without warming it. A cubic through the steam tables, within a twentieth of a percent. It burns skin as much as it boils wort: steam gives it all back.",
    equation: "heat = 2500925 − T (2376.08 − T (0.548582 − 0.01240432 T))",
    inputs: [{ at: "0", label: "Temperature", ...LATENT_HEAT_RANGE }],
    gives: "heat of evaporation, J/kg",
    sources: ["nist-steam-tables"],
    validRange: "0 to 102 °C.",
    call: latentHeat,
    example: [100],
  },
  {
    id: "heat/saturationPressure",
    words:
      "The pressure of water vapour over water, by the equation of Antoine with the constants of the handbooks. It is within half a percent of the steam tables.",
    equation: "log10 of the pressure in mmHg = 8.07131 − 1730.63 / (233.426 + T)",
    inputs: [{ at: "0", label: "Temperature", ...SATURATION_RANGE }],
    gives: "pressure, kPa",
    sources: ["antoine-water"],
    validRange: "0 to 100 °C.",
    call: saturationPressure,
    example: [20],
  },
  {
    id: "heat/evaporationFlux",
    words:
      "What evaporates from an open surface of hot water that does not boil. The equation was made for swimming pools and is carried on to hotter water. Below the dew point water condenses instead, which is left out.",
    equation: "evaporation = (p of the water − p of the air) × (0.089 + 0.0782 × air speed) / heat of evaporation",
    inputs: [
      fieldInput("celsius", "Water", EVAPORATION_RANGE.celsius),
      fieldInput("ambientC", "Air", EVAPORATION_RANGE.ambient),
      fieldInput("relativeHumidity", "Relative humidity", fraction.range),
      fieldInput("airSpeed", "Air speed", metresPerSecond.range),
    ],
    gives: "evaporation, kg/(m²·h)",
    sources: ["ashrae-carrier", "antoine-water", "nist-steam-tables"],
    validRange: "Water 0 to 102 °C, air −30 to 60 °C; studied below about 40 °C.",
    call: evaporationFlux,
    example: [{ celsius: 67, ambientC: 20, relativeHumidity: 0.5, airSpeed: 0.1 }],
  },
  {
    id: "heat/wortHeatCapacity",
    words:
      "The heat that warms a kilogram of wort by a kelvin, as of a pure sugar solution. Water itself is held constant, where it really varies by 0.8 %. The constants are from memory.",
    equation: "specific heat = 4186.8 − 25.1 × extract + 0.075 × extract × T",
    inputs: [
      fieldInput("plato", "Extract", WORT_HEAT_RANGE.plato),
      fieldInput("celsius", "Temperature", WORT_HEAT_RANGE.celsius),
    ],
    gives: "specific heat, J/(kg·K)",
    sources: ["bubnik-1995"],
    validRange: "0 to 35 °P, 0 to 102 °C.",
    call: wortHeatCapacity,
    example: [{ plato: 12, celsius: 65 }],
  },
  {
    id: "heat/maltHeatCapacity",
    words:
      "The heat that warms a kilogram of malt by a kelvin. It rises with the moisture of the malt; between the rows of the published table it is taken along a straight line.",
    equation: "specific heat = ratio of the table × 4186.8",
    inputs: [{ at: "0", label: "Moisture of the malt", ...MOISTURE }],
    gives: "specific heat, J/(kg·K)",
    sources: ["brewing-room-book-1985"],
    validRange: "0 to 8 % moisture.",
    call: maltHeatCapacity,
    example: [4],
  },
  {
    id: "heat/slakingRise",
    words:
      "By how much the heat of wetting warms a mash of usual thickness. Dry malt gives more. A small mash loses most of it through its walls, so the strike temperature leaves it out, as most rules do without saying so.",
    equation: "rise = straight lines between the rows of the table",
    inputs: [{ at: "0", label: "Moisture of the malt", ...MOISTURE }],
    gives: "rise, K",
    sources: ["brewing-room-book-1985"],
    validRange: "0 to 8 % moisture.",
    call: slakingRise,
    example: [4],
  },
  {
    id: "heat/elementPower",
    words:
      "What a heating element draws on a supply that is not the one it is rated for. Its resistance is taken as constant, so power goes with the square of the voltage. Wiring, fuses and earth follow the local electrical code.",
    equation: "power = rated power × (supply voltage / rated voltage)²",
    inputs: [
      fieldInput("ratedW", "Rated power", watts.range),
      fieldInput("ratedV", "Rated voltage", RATED_VOLTAGE_RANGE),
      fieldInput("supplyV", "Supply voltage", volts.range),
    ],
    gives: "power, W",
    sources: ["energy-balance"],
    validRange: "Rated voltage 1 to 1000 V, supply 0 to 1000 V, up to 10 MW.",
    call: elementPower,
    example: [{ ratedW: 1000, ratedV: 100, supplyV: 100 }],
  },
];
