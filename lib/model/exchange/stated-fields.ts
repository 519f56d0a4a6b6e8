import { fraction, litres } from "@/lib/calc/units";
import { measuredField } from "../field";

/** Numbers that both standards state and this book computes. */
export const PRE_BOIL = measuredField("Volume before the boil", "volume", litres, { min: 0.3, max: 10000 });
export const EFFICIENCY = measuredField("Brewhouse efficiency", "fraction", fraction, { min: 0.05, max: 1 });
