import { fraction, litres } from "@/lib/calc/units";
import { measuredField } from "../field";
import { optionalText, written } from "../written";

/** Numbers that both standards state and this book computes. */
export const PRE_BOIL = measuredField("Volume before the boil", "volume", litres, { min: 0.3, max: 10000 });
export const EFFICIENCY = measuredField("Brewhouse efficiency", "fraction", fraction, { min: 0.05, max: 1 });

/** Texts of a recipe, as its own schema takes them. */
export const TITLE = written("Title", 160);
export const NOTES = optionalText("Notes", 20000);
export const FERMENTABLE_NAME = written("Name of the fermentable", 80);
export const HOP_NAME = written("Name of the hop", 80);
export const YEAST_NAME = written("Name of the yeast", 80);
