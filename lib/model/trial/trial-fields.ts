import { DIP_STICK_RANGE } from "@/lib/calc/kettle";
import { celsius, fraction, litres, litresPerMinute, minutes } from "@/lib/calc/units";
import { measuredField } from "../field";

/** Every number that somebody reads or states in a trial, in the library's unit. */
export const TRIAL_FIELDS = {
  celsius: measuredField("Temperature", "temperature", celsius, { min: 0, max: 102 }),
  litres: measuredField("Volume", "volume", litres, { min: 0, max: 2000 }),
  water: measuredField("Water in the kettle", "volume", litres, { min: 0.2, max: 2000 }),
  waterC: measuredField("Temperature of the water when it was measured", "temperature", celsius, { min: 0, max: 100 }),
  air: measuredField("Air temperature", "temperature", celsius, { min: -20, max: 50 }),
  humidity: measuredField("Relative humidity", "fraction", fraction, { min: 0, max: 1 }),
  coolant: measuredField("Cooling water", "temperature", celsius, { min: 0, max: 40 }),
  flow: measuredField("Flow of cooling water", null, litresPerMinute, { min: 0, max: 500 }),
  poured: measuredField("Litres poured in this time", "volume", litres, { min: 0.01, max: 2000 }),
  hot: measuredField("Hot water on its way in", "temperature", celsius, { min: 0, max: 102 }),
  through: measuredField("Water run through", "volume", litres, { min: 0.5, max: 2000 }),
  minutes: measuredField("Time it took", "minutes", minutes, { min: 0.2, max: 600 }),
} as const;

/** Where the water of a dip-stick stands. */
export const MARK_RANGE = { ...DIP_STICK_RANGE.reading, unit: "" };

/** How well instruments tell, as standard uncertainties, where nobody says otherwise. Common practice, no source. */
export const USUAL_SD = {
  /** A kitchen thermometer that was held against ice and boiling water, K. */
  celsius: 0.3,
  /** A jug or a mark, as a share of what it says. */
  volumeShare: 0.01,
  leastLitres: 0.02,
  /** A bucket and a watch, as a share. */
  flowShare: 0.03,
  /** A depth, mm. */
  mm: 1,
  /** A numbered mark, as a part of a mark. */
  mark: 0.05,
} as const;
