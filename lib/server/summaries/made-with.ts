import "server-only";
import { SUMMARY_FORM } from "@/lib/model/summary/brew-summary";
import { CALC_VERSION } from "../calc-version";

/** Kept with a summary: one that another version made is stale. */
export const MADE_WITH = `${CALC_VERSION}.${SUMMARY_FORM}`;
