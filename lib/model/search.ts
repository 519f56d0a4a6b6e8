import { z } from "zod";
import { EXTRACT_RANGE, specificGravityToPlato } from "@/lib/calc/gravity";
import { ebcFromSrm, specificGravity, srm } from "@/lib/calc/units";
import { recordId } from "./written";

/** What is searched, in the order of the form. */
export const SEARCH_KINDS = ["recipe", "brew", "ingredient"] as const;
export type SearchKind = (typeof SEARCH_KINDS)[number];
