import { z } from "zod";
import type { Fermentable, HopAddition, WaterTreatment } from "@/lib/calc/ledger";
import { ebc, fraction, grams, kilograms, milligramsPerLitre, minutes } from "@/lib/calc/units";
import { measured } from "./measured";
import { oneOf, written } from "./written";

/** One fermentable. An amount of nothing is not a row: whoever wants none of it removes it. */
export const fermentableRow: z.ZodType<Fermentable> = z
  .strictObject({
    name: written("Name of the fermentable", 80),
    kind: oneOf("Kind of fermentable", ["malt", "adjunct", "sugar", "malt extract"]),
    kg: measured("Amount", kilograms, { min: 0.001, max: 5000 }),
    extract: measured("Extract yield", fraction, { min: 0.01, max: 1 }),
    moisture: measured("Moisture", fraction, { min: 0, max: 0.9 }),
    colour: measured("Malt colour", ebc, { min: 0, max: 2500 }),
    station: oneOf("Where it goes in", ["mash", "kettle"]),
    fermentability: measured("Fermentability", fraction).nullable(),
  })
  .refine((row) => row.kind !== "malt" || row.station === "mash", {
    path: ["station"],
    message: "Malt goes into the mash",
  });

export const hopRow: z.ZodType<HopAddition> = z.strictObject({
  name: written("Name of the hop", 80),
  grams: measured("Amount", grams, { min: 0.1, max: 500000 }),
  alpha: measured("Alpha acids", fraction, { min: 0, max: 0.3 }),
  use: oneOf("Use of the hop", ["boil", "stand", "dry"]),
  minutes: measured("Hop time", minutes, { min: 0, max: 600 }),
});

const ion = (label: string) => measured(label, milligramsPerLitre, { min: 0, max: 3000 });
const salt = (label: string) => measured(label, grams, { min: 0, max: 20000 });

export const waterTreatment: z.ZodType<WaterTreatment> = z.strictObject({
  source: z.strictObject({
    calcium: ion("Calcium"),
    magnesium: ion("Magnesium"),
    sodium: ion("Sodium"),
    sulfate: ion("Sulfate"),
    chloride: ion("Chloride"),
    bicarbonate: ion("Bicarbonate"),
  }),
  salts: z.strictObject({
    gypsum: z.exactOptional(salt("Gypsum")),
    calciumChlorideDihydrate: z.exactOptional(salt("Calcium chloride")),
    epsomSalt: z.exactOptional(salt("Epsom salt")),
    tableSalt: z.exactOptional(salt("Table salt")),
    bakingSoda: z.exactOptional(salt("Baking soda")),
    chalk: z.exactOptional(salt("Chalk")),
    slakedLime: z.exactOptional(salt("Slaked lime")),
  }),
});
