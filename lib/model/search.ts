import { z } from "zod";
import { specificGravityToPlato } from "@/lib/calc/gravity";
import { ebcFromSrm, specificGravity, srm } from "@/lib/calc/units";
import { counted, ranged } from "./measured";
import { oneOf, optionalText, recordId } from "./written";

/** What can be found, in the order of the form. */
export const SEARCH_KINDS = ["recipe", "brew", "ingredient"] as const;
export type SearchKind = (typeof SEARCH_KINDS)[number];

export const SEARCH_PAGE_SIZE = 20;
const LAST_PAGE = 25;
/** Of more matches than fill the pages, the newest are weighed against each other. */
export const MOST_MATCHES = SEARCH_PAGE_SIZE * LAST_PAGE;

/** Bounds in an address carry their unit, so that a link means the same to everybody, in whatever units they read. */
const sg = (label: string) =>
  ranged(label, { min: 0.96, max: 1.2, unit: "SG" }).transform((value) =>
    specificGravityToPlato(specificGravity(value)),
  );
const ebc = (label: string) => ranged(label, { min: 0, max: 2500, unit: "EBC" });
const inSrm = (label: string) =>
  ranged(label, { min: 0, max: 1270, unit: "SRM" }).transform((value): number => ebcFromSrm(srm(value)));
const plato = (label: string) => ranged(label, { min: 0, max: 35, unit: "°P" });
const ibu = (label: string) => ranged(label, { min: 0, max: 1000, unit: "IBU" });
const vol = (label: string) => ranged(label, { min: 0, max: 30, unit: "% vol" });

/** An empty field of a form is a filter that nobody set. */
function unlessEmpty<T>(schema: z.ZodType<T>): z.ZodType<T | null> {
  return z
    .unknown()
    .transform((value, context): T | null => {
      const first: unknown = Array.isArray(value) ? value[0] : value;
      if (first === undefined || first === null || (typeof first === "string" && first.trim() === "")) return null;
      const parsed = schema.safeParse(first);
      if (parsed.success) return parsed.data;
      for (const { message } of parsed.error.issues) context.addIssue({ code: "custom", message });
      return z.NEVER;
    })
    .default(null);
}

const day = (label: string) =>
  z
    .string()
    .regex(/^\d{4}-\d{2}-\d{2}$/, `${label} is not a day`)
    .transform((text, context) => {
      const at = new Date(`${text}T00:00:00Z`);
      if (!Number.isNaN(at.getTime()) && at.getUTCFullYear() >= 1000) return at;
      context.addIssue({ code: "custom", message: `${label} “${text}” is not a day` });
      return z.NEVER;
    });

/** A search as an address has it; what is not known is left aside, because addresses gather things on their way. */
export const searchInput = z.object({
  q: unlessEmpty(optionalText("Search", 200)),
  kind: unlessEmpty(oneOf("Kind", SEARCH_KINDS)),
  where: unlessEmpty(oneOf("Where", ["everywhere"])),
  style: unlessEmpty(z.string().regex(/^[\w-]{1,12}$/, "Style is not on the list")),
  author: unlessEmpty(recordId),
  brewed: unlessEmpty(oneOf("Brewed", ["yes", "no"])),
  sgFrom: unlessEmpty(sg("Original gravity from")),
  sgTo: unlessEmpty(sg("Original gravity to")),
  pFrom: unlessEmpty(plato("Original extract from")),
  pTo: unlessEmpty(plato("Original extract to")),
  volFrom: unlessEmpty(vol("Alcohol from")),
  volTo: unlessEmpty(vol("Alcohol to")),
  ibuFrom: unlessEmpty(ibu("Bitterness from")),
  ibuTo: unlessEmpty(ibu("Bitterness to")),
  ebcFrom: unlessEmpty(ebc("Colour from")),
  ebcTo: unlessEmpty(ebc("Colour to")),
  srmFrom: unlessEmpty(inSrm("Colour from")),
  srmTo: unlessEmpty(inSrm("Colour to")),
  since: unlessEmpty(day("Changed since")),
  until: unlessEmpty(day("Changed until")),
  page: unlessEmpty(counted("Page", { min: 1, max: LAST_PAGE })),
});
export type SearchInput = z.output<typeof searchInput>;

/** Part of a text; `isMatch` is what was looked for. */
export interface MarkedPart {
  readonly text: string;
  readonly isMatch: boolean;
}

/** A record that was found. */
export interface SearchHit {
  readonly kind: SearchKind;
  readonly id: string;
  readonly spaceSlug: string;
  readonly spaceName: string;
  readonly title: readonly MarkedPart[];
  /** Where else the words stand; none where they stand in the title alone. */
  readonly excerpts: readonly (readonly MarkedPart[])[];
  readonly style: string | null;
  readonly authorName: string;
  readonly brewed: boolean;
  readonly changedAt: Date;
  readonly originalPlato: number | null;
  readonly bitternessIbu: number | null;
  readonly colourEbc: number | null;
  readonly alcoholVol: number | null;
}

export interface SearchResult {
  readonly hits: readonly SearchHit[];
  /** How many there are; with `isMore`, at least so many. */
  readonly matches: number;
  readonly isMore: boolean;
  /** What was looked for instead of words that stand nowhere. */
  readonly corrected: string | null;
}
