import { bottlePressure, closedPressure, co2Volumes, co2VolumesAtAltitude, gaugePressure } from "../../carbonation";
import { gaugePressureAtAltitude, gramsPerLitreFromVolumes, residualCo2 } from "../../carbonation";
import { SOLUBILITY_RANGE, volumesFromGramsPerLitre } from "../../carbonation";
import { RATED_RANGE } from "../../carbonation/bottle-pressure";
import { GAUGE_RANGE } from "../../carbonation/co2-volumes";
import { GAUGE_AT_ALTITUDE_RANGE } from "../../carbonation/co2-volumes-at-altitude";
import { DISSOLVED_RANGE } from "../../carbonation/volumes-from-grams-per-litre";
import { metres, volumesCo2 } from "../../units";
import type { FunctionInput, FunctionRecord } from "./function-record";

const warmth = (label: string): FunctionInput => ({ at: "0.celsius", label, ...SOLUBILITY_RANGE.celsius });
const volumes: FunctionInput = { at: "0.volumes", label: "Carbonation", ...SOLUBILITY_RANGE.volumes };
const altitude: FunctionInput = { at: "0.altitudeM", label: "Altitude", ...metres.range };

/** The gas that leaves a keg fills the room before anyone smells it. */
const ROOM =
  "Carbon dioxide has no smell and gathers near the floor: a leaking cylinder or a keg that blows off in a closed cellar or walk-in cooler can kill, so air the room, use a monitor where local codes ask for one, and leave at once on a headache or short breath.";

/** How the functions of pressure and dissolved gas are explained. */
export const CARBONATION_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "carbonation/co2Volumes",
    words: `The carbon dioxide in beer that has come to rest under a pressure, by a fit to the brewers' table. A volume is a litre of gas at 0 °C and 1 atm in a litre of beer. The strength and the alcohol of the beer are left out; they move it by some 2 %. Up to 20 °C it agrees with Henry's law within 0.08 volumes. ${ROOM}`,
    equation:
      "volumes = (gauge pressure + 1.0132 bar) × (0.01821 + 0.090115 × exp(−1.8 t / 43.11)) / 0.06895 bar − 0.0033, t in °C",
    inputs: [warmth("Temperature of the beer"), { at: "0.gaugeBar", label: "Gauge pressure", ...GAUGE_RANGE }],
    gives: "carbonation, volumes",
    sources: ["delange-2011", "asbc-beer-13"],
    validRange:
      "−2 to 45 °C and from a vacuum to 20 bar at sea level, up to 10 volumes; the table ends near 20 °C and 2 bar.",
    call: co2Volumes,
    example: [{ celsius: 4, gaugeBar: 0.81 }],
  },
  {
    id: "carbonation/gaugePressure",
    words: `The pressure to set on a keg so that its beer comes to rest with a wanted carbonation: the exact inverse of the fit behind co2Volumes. It is the pressure at rest, after a week or a good shaking, and leaves out what a long line takes. In warm beer the fit reads too low for judging whether a bottle holds. ${ROOM}`,
    equation:
      "gauge pressure = (volumes + 0.0033) × 0.06895 bar / (0.01821 + 0.090115 × exp(−1.8 t / 43.11)) − 1.0132 bar, t in °C",
    inputs: [warmth("Temperature of the beer"), volumes],
    gives: "gauge pressure at sea level, bar",
    sources: ["delange-2011", "asbc-beer-13"],
    validRange: "−2 to 45 °C, 0 to 10 volumes, at sea level; the table behind the fit ends near 20 °C.",
    call: gaugePressure,
    example: [{ celsius: 4, volumes: 2.5 }],
  },
  {
    id: "carbonation/gaugePressureAtAltitude",
    words:
      "The pressure to set on a keg in a cellar above the sea. Beer answers to the absolute pressure and a gauge shows what is above the air, so the gauge must show more by what the air lacks. The trade's rule of one psi for each 2000 ft agrees within 0.1 psi up to 6000 ft. The weather moves the air by another 0.02 bar.",
    equation:
      "gauge pressure = that at sea level + (101.325 − p) / 100, p = 101.325 × (1 − 2.25577·10⁻⁵ h)^5.25588 kPa",
    inputs: [warmth("Temperature of the beer"), volumes, altitude],
    gives: "gauge pressure, bar",
    sources: ["delange-2011", "iso-2533-1975"],
    validRange: "−2 to 45 °C, 0 to 10 volumes, −450 to 6000 m.",
    call: gaugePressureAtAltitude,
    example: [{ celsius: 4, volumes: 2.5, altitudeM: 1500 }],
  },
  {
    id: "carbonation/co2VolumesAtAltitude",
    words:
      "The carbonation of beer at rest from the gauge in a cellar above the sea. What the air lacks is taken off the gauge and the rest goes through the fit to the brewers' table. The weather is left out.",
    equation: "volumes = those at sea level for gauge pressure − (101.325 − p) / 100, p the pressure of the air in kPa",
    inputs: [
      warmth("Temperature of the beer"),
      { at: "0.gaugeBar", label: "Gauge pressure", ...GAUGE_AT_ALTITUDE_RANGE },
      altitude,
    ],
    gives: "carbonation, volumes",
    sources: ["delange-2011", "iso-2533-1975"],
    validRange: "−2 to 45 °C, −0.4 to 19.9 bar, −450 to 6000 m, up to 10 volumes.",
    call: co2VolumesAtAltitude,
    example: [{ celsius: 4, gaugeBar: 0.98, altitudeM: 1500 }],
  },
  {
    id: "carbonation/closedPressure",
    words:
      "The pressure in a closed bottle or keg whose beer has come to rest, by Henry's law. In warm beer it gives more than the fit that gaugePressure uses, and the gas in the headspace is left out: both err to the safe side. Air shut in with the beer adds to it, and so does any extract that yeast has still to ferment.",
    equation: "gauge pressure = volumes × 1.9635 g/L / (10 × exp(−10.73797 + 2617.25 / T)) − 1.013 bar, T in kelvin",
    inputs: [volumes, warmth("Warmest storage")],
    gives: "gauge pressure at sea level, bar",
    sources: ["henry-co2"],
    validRange: "0 to 10 volumes, −2 to 45 °C.",
    call: closedPressure,
    example: [{ volumes: 2.5, celsius: 30 }],
  },
  {
    id: "carbonation/bottlePressure",
    words:
      "The pressure in a closed bottle at the warmest place it will stand, and a refusal where it is more than the maker states. A bottle that bursts injures hands and eyes: only the maker's figure counts, used or scratched glass holds less, and the rules of thumb for kinds of bottles are common practice without a source. A rating given as carbonation knows no temperature; one given in bar is held against the warm bottle. Wear goggles and gloves when a batch may be over its rating, and chill it before touching it.",
    equation:
      "gauge pressure as for closedPressure; refused when volumes > rated volumes or gauge pressure > rated pressure",
    inputs: [
      volumes,
      warmth("Warmest storage"),
      { at: "0.rated", label: "Carbonation that the maker states", ...RATED_RANGE.volumes },
      { at: "0.ratedBar", label: "Pressure that the maker states", ...RATED_RANGE.bar },
    ],
    gives: "gauge pressure, bar, or the refusal with it",
    sources: ["henry-co2", "trade-practice"],
    validRange: "0 to 10 volumes, −2 to 45 °C, ratings up to 10 volumes and 20 bar.",
    call: bottlePressure,
    example: [{ volumes: 2.5, celsius: 30, rated: 3, ratedBar: 6 }],
  },
  {
    id: "carbonation/residualCo2",
    words:
      "The carbon dioxide that beer keeps after fermentation in a vessel open to the air. It counts the warmest temperature since fermentation ended, because what was lost then does not come back when the beer is chilled. The parabola is common practice; it turns upward at 34.6 °C, and its lowest value holds from there on, which asks for too little priming sugar rather than too much. In the mountains beer keeps less, in proportion to the air.",
    equation: "volumes = 3.0378 − 0.050062 F + 0.00026555 F², F the temperature in °F and at most 94.3",
    inputs: [{ at: "0", label: "Warmest temperature since fermentation ended", ...SOLUBILITY_RANGE.celsius }],
    gives: "carbonation, volumes",
    sources: ["trade-practice"],
    validRange: "−2 to 45 °C, at sea level.",
    call: residualCo2,
    example: [18],
  },
  {
    id: "carbonation/gramsPerLitreFromVolumes",
    words:
      "Carbon dioxide in grams to a litre of beer from volumes, the two scales in use. A volume is counted as the ideal gas at 0 °C and 1 atm, 22.414 L/mol; the real gas is 0.7 % denser, 1.977 g/L, and some tables use that.",
    equation: "g/L = volumes × 44.009 / 22.414",
    inputs: [{ at: "0", label: "Carbonation", ...volumesCo2.range }],
    gives: "dissolved carbon dioxide, g/L",
    sources: ["iupac-2021"],
    validRange: "0 to 10 volumes.",
    call: gramsPerLitreFromVolumes,
    example: [2.5],
  },
  {
    id: "carbonation/volumesFromGramsPerLitre",
    words:
      "Volumes of carbon dioxide from grams to a litre of beer: the exact inverse of gramsPerLitreFromVolumes, with the same ideal gas.",
    equation: "volumes = g/L × 22.414 / 44.009",
    inputs: [{ at: "0", label: "Dissolved carbon dioxide", ...DISSOLVED_RANGE }],
    gives: "carbonation, volumes",
    sources: ["iupac-2021"],
    validRange: "0 to 19.6 g/L, which is 10 volumes.",
    call: volumesFromGramsPerLitre,
    example: [5],
  },
];
