/** How one person wants numbers and colours shown, with the choices in the order of the form. */
export const PREFERENCE_CHOICES = {
  units: ["metric", "us"],
  gravity: ["sg", "plato"],
  colour: ["ebc", "srm"],
  theme: ["auto", "light", "dark"],
} as const;

export type Preferences = {
  readonly [K in keyof typeof PREFERENCE_CHOICES]: (typeof PREFERENCE_CHOICES)[K][number];
};

export const DEFAULT_PREFERENCES: Preferences = { units: "metric", gravity: "sg", colour: "ebc", theme: "auto" };
