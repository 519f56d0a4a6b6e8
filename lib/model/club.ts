import { z } from "zod";
import { written } from "./written";

export const newClub = z.strictObject({
  name: written("Name of the club", 120),
  slug: z
    .string({ error: "Address of the club is empty" })
    .trim()
    .regex(
      /^[a-z0-9][a-z0-9-]{1,38}[a-z0-9]$/,
      "Address of the club takes 3 to 40 small letters, digits and hyphens, with a letter or digit at both ends",
    ),
});
export type NewClub = z.output<typeof newClub>;
