import { z } from "zod";
import { IONS } from "@/lib/calc/water";

/** What a member chooses, as the form sends it. */
export const partFields = {
  "brewDay.day": z.string(),
  "brewDay.time": z.string(),
  "brewDay.zone": z.string(),
  "water.calcium": z.string(),
  "water.magnesium": z.string(),
  "water.sodium": z.string(),
  "water.sulfate": z.string(),
  "water.chloride": z.string(),
  "water.bicarbonate": z.string(),
  yeast: z.string(),
};

type PartFields = z.output<z.ZodObject<typeof partFields>>;

/** The same as the model takes it: no day is no brew day, and six empty figures are no water. */
export function partOf(fields: PartFields): {
  readonly brewDay: unknown;
  readonly water: unknown;
  readonly yeast: string;
} {
  const day = fields["brewDay.day"].trim();
  const ions = IONS.map((ion) => [ion, fields[`water.${ion}`].trim().replace(",", ".")] as const);
  return {
    brewDay: day === "" ? null : { day, time: fields["brewDay.time"].trim(), zone: fields["brewDay.zone"].trim() },
    water: ions.every(([, text]) => text === "") ? null : Object.fromEntries(ions),
    yeast: fields.yeast,
  };
}
