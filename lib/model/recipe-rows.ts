import { z } from "zod";
import type { Fermentable, HopAddition, WaterTreatment } from "@/lib/calc/ledger";
import { fraction, kilogramsPerLitre } from "@/lib/calc/units";
import { ACIDS, type Ions } from "@/lib/calc/water";
import { measuredBy } from "./measured";
import { ACID_FIELDS, FERMENTABLE_FIELDS, HOP_FIELDS, ION_FIELDS, SALT_FIELDS } from "./recipe-fields";
import { oneOf, written } from "./written";

/** One fermentable. An amount of nothing is not a row: whoever wants none of it removes it. */
export const fermentableRow: z.ZodType<Fermentable> = z
  .strictObject({
    name: written("Name of the fermentable", 80),
    kind: oneOf("Kind of fermentable", ["malt", "adjunct", "sugar", "malt extract"]),
    kg: measuredBy(FERMENTABLE_FIELDS.kg),
    extract: measuredBy(FERMENTABLE_FIELDS.extract),
    moisture: measuredBy(FERMENTABLE_FIELDS.moisture),
    colour: measuredBy(FERMENTABLE_FIELDS.colour),
    station: oneOf("Where it goes in", ["mash", "kettle"]),
    fermentability: measuredBy(FERMENTABLE_FIELDS.fermentability).nullable(),
    // A revision from before the pH of the mash was computed has none.
    acidity: z
      .strictObject({
        distilledWaterPh: measuredBy(FERMENTABLE_FIELDS.distilledWaterPh),
        buffering: measuredBy(FERMENTABLE_FIELDS.buffering),
        lacticFraction: measuredBy(FERMENTABLE_FIELDS.lacticFraction),
      })
      .nullable()
      .default(null),
  })
  .refine((row) => row.kind !== "malt" || row.station === "mash", {
    path: ["station"],
    message: "Malt goes into the mash",
  });

export const hopRow: z.ZodType<HopAddition> = z.strictObject({
  name: written("Name of the hop", 80),
  grams: measuredBy(HOP_FIELDS.grams),
  alpha: measuredBy(HOP_FIELDS.alpha),
  use: oneOf("Use of the hop", ["boil", "stand", "dry"]),
  minutes: measuredBy(HOP_FIELDS.minutes),
});

/** What a water holds, mg/L of each ion. */
export const waterSource: z.ZodType<Ions> = z.strictObject({
  calcium: measuredBy(ION_FIELDS.calcium),
  magnesium: measuredBy(ION_FIELDS.magnesium),
  sodium: measuredBy(ION_FIELDS.sodium),
  sulfate: measuredBy(ION_FIELDS.sulfate),
  chloride: measuredBy(ION_FIELDS.chloride),
  bicarbonate: measuredBy(ION_FIELDS.bicarbonate),
});

export const waterTreatment: z.ZodType<WaterTreatment> = z.strictObject({
  source: waterSource,
  salts: z.strictObject({
    gypsum: z.exactOptional(measuredBy(SALT_FIELDS.gypsum)),
    calciumChlorideDihydrate: z.exactOptional(measuredBy(SALT_FIELDS.calciumChlorideDihydrate)),
    epsomSalt: z.exactOptional(measuredBy(SALT_FIELDS.epsomSalt)),
    tableSalt: z.exactOptional(measuredBy(SALT_FIELDS.tableSalt)),
    bakingSoda: z.exactOptional(measuredBy(SALT_FIELDS.bakingSoda)),
    chalk: z.exactOptional(measuredBy(SALT_FIELDS.chalk)),
    slakedLime: z.exactOptional(measuredBy(SALT_FIELDS.slakedLime)),
  }),
  acid: z
    .strictObject({
      solution: z.strictObject({
        acid: oneOf("Acid", ACIDS),
        massFraction: z.number().min(0.001).max(1).transform(fraction),
        density: z.number().min(0.9).max(2).transform(kilogramsPerLitre),
      }),
      ml: measuredBy(ACID_FIELDS.ml),
    })
    .nullable()
    .default(null),
});
