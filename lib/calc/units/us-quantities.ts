import { defineQuantity, type Quantity } from "./quantity";

// Units of screens and forms only: nothing is stored or computed in them.

export type UsGallons = Quantity<"US gal">;
export const usGallons = defineQuantity("volume", { unit: "US gal", min: 0, max: 26418 });

export type ImperialGallons = Quantity<"imp gal">;
export const imperialGallons = defineQuantity("volume", { unit: "imp gal", min: 0, max: 21997 });

export type UsQuarts = Quantity<"US qt">;
export const usQuarts = defineQuantity("volume", { unit: "US qt", min: 0, max: 105669 });

export type UsFluidOunces = Quantity<"US fl oz">;
export const usFluidOunces = defineQuantity("volume", { unit: "US fl oz", min: 0, max: 3381403 });

export type Pounds = Quantity<"lb">;
export const pounds = defineQuantity("mass", { unit: "lb", min: 0, max: 220463 });

export type Ounces = Quantity<"oz">;
export const ounces = defineQuantity("mass", { unit: "oz", min: 0, max: 352740 });

export type Fahrenheit = Quantity<"°F">;
export const fahrenheit = defineQuantity("temperature", { unit: "°F", min: -22, max: 266 });

export type Feet = Quantity<"ft">;
export const feet = defineQuantity("altitude", { unit: "ft", min: -1477, max: 19686 });

export type Psi = Quantity<"psi">;
export const psi = defineQuantity("pressure", { unit: "psi", min: -16, max: 363 });

export type QuartsPerPound = Quantity<"US qt/lb">;
export const quartsPerPound = defineQuantity("volume per mass", { unit: "US qt/lb", min: 0, max: 9.6 });

export type OuncesPerUsGallon = Quantity<"oz/US gal">;
export const ouncesPerUsGallon = defineQuantity("concentration", { unit: "oz/US gal", min: 0, max: 134 });

export type UsGallonsPerMinute = Quantity<"US gal/min">;
export const usGallonsPerMinute = defineQuantity("flow", { unit: "US gal/min", min: 0, max: 2642 });
