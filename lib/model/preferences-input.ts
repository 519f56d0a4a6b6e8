import { z } from "zod";
import { PREFERENCE_CHOICES, type Preferences } from "./preferences";
import { oneOf } from "./written";

export const preferencesInput: z.ZodType<Preferences> = z.strictObject({
  units: oneOf("Units", PREFERENCE_CHOICES.units),
  gravity: oneOf("Gravity", PREFERENCE_CHOICES.gravity),
  colour: oneOf("Colour", PREFERENCE_CHOICES.colour),
  theme: oneOf("Theme", PREFERENCE_CHOICES.theme),
});
