import { dipStickVolume, volumeAtReference } from "@/lib/calc/kettle";
import type { KettleDipStick } from "@/lib/calc/ledger";
import { OutOfRangeError } from "@/lib/calc/errors";
import { celsius, degreesPlato, litres } from "@/lib/calc/units";
import type { Preferences } from "@/lib/model/preferences";
import { formatQuantity } from "../format-quantity";
import { parseAmount } from "../parse-amount";

/** What decides how a volume in a vessel is read. */
export interface VolumeReading {
  /** The temperature for which the ledger states this volume. */
  readonly referenceC: number;
  /** About how strong the liquid is; its swelling depends little on it. */
  readonly plato: number;
  /** The table of the kettle's stick, where it has one. */
  readonly dipStick: KettleDipStick | null;
}

interface VolumeText {
  readonly label: string;
  readonly amount: string;
  readonly sample: string;
  readonly isStick: boolean;
  readonly preferences: Preferences;
  readonly range: { readonly min: number; readonly max: number };
  readonly volume: VolumeReading;
}

export type ReadVolume =
  | {
      readonly ok: true;
      readonly litres: number;
      readonly sampleC: number;
      /** What the stick adds to the stated uncertainty, L; null without one. */
      readonly stickSd: number | null;
      readonly correction: string | null;
    }
  | { readonly ok: false; readonly field: "amount" | "sample"; readonly message: string };

/** Reads a volume off its vessel, by its stick where there is one, and counts it at the ledger's temperature. */
export function readVolume(a: VolumeText): ReadVolume {
  const { label, preferences, volume, range } = a;
  const sample = parseAmount({ text: a.sample, label: "Liquid at", dimension: "temperature", preferences });
  if (!sample.ok) return { ok: false, field: "sample", message: sample.message };
  const read = a.isStick && volume.dipStick !== null ? byStick(a, volume.dipStick) : byMark(a);
  if (!read.ok) return read;
  try {
    const value = atReference(read.litres, sample.value, volume);
    if (value > range.max) throw new OutOfRangeError(label, value, { unit: "L", ...range });
    return { ...read, litres: value, sampleC: sample.value, correction: correctionOf(a, read, sample.value, value) };
  } catch (error) {
    if (!(error instanceof OutOfRangeError)) throw error;
    const field = error.quantity === "temperature" ? "sample" : "amount";
    return { ok: false, field, message: `${field === "sample" ? "Liquid at" : label}: ${error.message}` };
  }
}

type Read =
  | { readonly ok: true; readonly litres: number; readonly stickSd: number | null }
  | { readonly ok: false; readonly field: "amount"; readonly message: string };

function byMark({ label, amount, preferences, range }: VolumeText): Read {
  const parsed = parseAmount({ text: amount, label, dimension: "volume", preferences, range });
  if (!parsed.ok) return { ok: false, field: "amount", message: parsed.message };
  return { ok: true, litres: parsed.value, stickSd: null };
}

const PLAIN = /^\s*(\d+[.,]?\d*|[.,]\d+)\s*(?:mm)?\s*$/i;

function byStick({ label, amount }: VolumeText, table: KettleDipStick): Read {
  const number = PLAIN.exec(amount)?.[1]?.replace(",", ".");
  if (number === undefined) {
    const shown = amount.trim() === "" ? "is empty" : `“${amount.trim().slice(0, 40)}” is not a number`;
    return { ok: false, field: "amount", message: `${label} ${shown}; the stick is read in ${stickUnit(table)}` };
  }
  const volume = dipStickVolume({ table, reading: Number(number) });
  if (volume.ok) return { ok: true, litres: volume.litres, stickSd: volume.sd };
  const unit = stickUnit(table);
  const from = `${String(volume.from)} to ${String(volume.to)} ${unit}`;
  return { ok: false, field: "amount", message: `${label} ${number} ${unit} is outside the stick’s table, ${from}` };
}

/** In what a stick is read. */
export function stickUnit({ unit }: KettleDipStick): string {
  return unit === "mm" ? "mm" : "marks";
}

/** Wort boils a little above this; the densities end here, and the difference is below a thousandth. */
const HOTTEST_C = 100;

/** The same liquid at the temperature for which the ledger states it: through 20 °C and back. */
function atReference(read: number, readC: number, { referenceC, plato }: VolumeReading): number {
  const strength = degreesPlato(plato);
  // What is far above the boil is a slip of the pen, and refused by the library.
  const at = (temperature: number) =>
    celsius(temperature < HOTTEST_C + 3 ? Math.min(HOTTEST_C, temperature) : temperature);
  const cold = volumeAtReference({ litres: litres(read), celsius: at(readC), plato: strength });
  const oneCold = volumeAtReference({ litres: litres(1), celsius: at(referenceC), plato: strength });
  return cold / oneCold;
}

function correctionOf(
  { preferences, volume }: VolumeText,
  { litres: read, stickSd }: { readonly litres: number; readonly stickSd: number | null },
  readC: number,
  value: number,
): string | null {
  const text = (litresRead: number): string => {
    const shown = formatQuantity({ value: litresRead, dimension: "volume", preferences });
    return `${shown.text} ${shown.unit}`;
  };
  const parts: string[] = [];
  if (stickSd !== null) parts.push(`The stick says ${text(read)}`);
  if (Math.abs(readC - volume.referenceC) >= 1) {
    const reference = formatQuantity({ value: volume.referenceC, dimension: "temperature", preferences, digits: 0 });
    parts.push(`At ${reference.text} ${reference.unit} it takes up ${text(value)}`);
  }
  return parts.length === 0 ? null : parts.join(". ");
}
