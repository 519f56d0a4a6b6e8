import { EXTRACT_RANGE } from "../../gravity/extract-range";
import { WORT_RANGE } from "../../gravity";
import { DIP_STICK_RANGE, dipStickVolume, volumeAtReference } from "../../kettle";
import { litres } from "../../units";
import { fieldInput } from "./field-input";
import type { FunctionRecord } from "./function-record";

const LOW = { reading: 50, litres: 5, sd: 0.05 };
const HIGH = { reading: 250, litres: 25, sd: 0.1 };
/** A mark that does not rise above the one before is refused; this far apart is enough. */
const STEP = 2e-6;

/** How volumes read in the kettle are explained. */
export const KETTLE_READING_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "kettle/volumeAtReference",
    words:
      "What a volume that was read hot is at 20 °C, where the ledger counts it: the mass stays, the density tells how far it shrinks. Boiling water loses 4 %. The kettle itself swells too, by 0.4 % for steel at the boil; that counts where its material is given, and is ignored where it is not. Read the mark from the side and not over the steam.",
    equation: "volume at 20 °C = reading × (1 + 3 × expansion × (T − 20)) × density at T / density at 20 °C",
    inputs: [
      fieldInput("litres", "Volume read", litres.range),
      fieldInput("celsius", "Temperature", WORT_RANGE.celsius),
      fieldInput("plato", "Extract", EXTRACT_RANGE),
    ],
    gives: "volume at 20 °C, L",
    sources: ["mass-balance", "kell-1975", "bubnik-1995", "crc-handbook"],
    validRange: "Up to 35 °P, 0 to 100 °C, up to 100 000 L.",
    call: volumeAtReference,
    example: [{ litres: 30, celsius: 100, plato: 11, vessel: "stainless steel" }],
  },
  {
    id: "kettle/dipStickVolume",
    words:
      "The volume that a depth or a mark stands for, along straight lines between the marks of the kettle's own table. A kettle with upright walls fills evenly; a rounded bottom wants its marks close together. Outside the table there is no answer. The uncertainty joins those of both marks, as if they went together, and that of the reading.",
    equation:
      "volume = V₁ + (V₂ − V₁) (reading − r₁) / (r₂ − r₁); sd² = (sd₁ + (sd₂ − sd₁) share)² + (slope × sd of the reading)²",
    inputs: [
      { at: "0.reading", label: "Reading", unit: "mm", min: LOW.reading, max: HIGH.reading },
      { at: "0.readingSd", label: "Uncertainty of the reading", ...DIP_STICK_RANGE.readingSd, unit: "mm" },
      { at: "0.table.marks.0.reading", label: "First mark", unit: "mm", min: 0, max: HIGH.reading - STEP },
      { at: "0.table.marks.0.litres", label: "Volume at the first mark", unit: "L", min: 0, max: HIGH.litres - STEP },
      { at: "0.table.marks.0.sd", label: "Uncertainty of the first mark", ...DIP_STICK_RANGE.sd },
      {
        at: "0.table.marks.1.litres",
        label: "Volume at the second mark",
        unit: "L",
        min: LOW.litres + STEP,
        max: litres.range.max,
      },
    ],
    gives: "volume and its standard uncertainty, L; or that the table does not reach so far",
    sources: ["abramowitz-stegun-1964"],
    validRange: "Between the first and the last mark; 2 to 60 marks, readings 0 to 5000.",
    call: dipStickVolume,
    example: [{ table: { unit: "mm", marks: [LOW, HIGH] }, reading: 150, readingSd: 2 }],
  },
];
