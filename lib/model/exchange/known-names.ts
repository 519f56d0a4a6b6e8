import { SALTS, type Salt } from "@/lib/calc/water";
import { ACID_SOLUTIONS, type AcidSolution } from "@/lib/calc/water";
import { SALT_FIELDS } from "../recipe-fields";
import { TYPICAL_FERMENTABLES, type TypicalFermentable } from "../ingredients";
import { STYLES, type Style } from "../styles";
import { YEAST_CLASSES, type YeastClass } from "../yeast-classes";

/** Names and formulas that the trade has for a salt; the hydrates are those of this book. */
const SALT_WORDS: Readonly<Record<Salt, RegExp>> = {
  gypsum: /gypsum|calcium sul(?:f|ph)ate|\bcaso4/i,
  calciumChlorideDihydrate: /calcium chloride|\bcacl2/i,
  epsomSalt: /epsom|magnesium sul(?:f|ph)ate|\bmgso4/i,
  tableSalt: /table salt|sodium chloride|\bnacl\b/i,
  bakingSoda: /baking soda|sodium bicarbonate|\bnahco3/i,
  chalk: /chalk|calcium carbonate|\bcaco3/i,
  slakedLime: /slaked lime|pickling lime|calcium hydroxide|\bca\(oh\)2/i,
};

export function saltNamed(name: string): Salt | null {
  return SALTS.find((salt) => SALT_WORDS[salt].test(name)) ?? null;
}

export function nameOfSalt(salt: Salt): string {
  return SALT_FIELDS[salt].label;
}

/** "Lactic acid 80 %": an acid by its strength, as it stands on the bottle. */
export function nameOfAcid({ acid, massFraction }: AcidSolution): string {
  const words = acid.charAt(0).toUpperCase() + acid.slice(1);
  return `${words} acid ${String(Number((100 * massFraction).toPrecision(4)))} %`;
}

/** An acid whose strength is in its name; without one nobody knows how much a millilitre is. */
export function acidNamed(name: string): AcidSolution | null {
  const words = name.trim().toLowerCase();
  return Object.values(ACID_SOLUTIONS).find((solution) => nameOfAcid(solution).toLowerCase() === words) ?? null;
}

export function typicalNamed(name: string): TypicalFermentable | null {
  const words = name.trim().toLowerCase();
  return TYPICAL_FERMENTABLES.find((row) => row.name.toLowerCase() === words) ?? null;
}

export function yeastClassNamed(name: string): YeastClass | null {
  const words = name.trim().toLowerCase();
  return YEAST_CLASSES.find((row) => row.name.toLowerCase() === words) ?? null;
}

export const STYLE_GUIDE = "BJCP 2021";

/** A style by number and letter, where the file names the guidelines that this book knows; otherwise by its name. */
export function styleNamed(a: { readonly guide: string; readonly code: string; readonly name: string }): Style | null {
  const isOurGuide = /bjcp/i.test(a.guide) && /2021/.test(a.guide);
  const byCode = isOurGuide ? STYLES.filter(({ code }) => code === a.code.toUpperCase()) : [];
  const [only] = byCode;
  if (byCode.length === 1 && only !== undefined) return only;
  const words = a.name.trim().toLowerCase();
  return (byCode.length > 1 ? byCode : STYLES).find(({ name }) => name.toLowerCase() === words) ?? null;
}

/** "18B" as the standards write it: number of the category and letter of the style. */
export function partsOfStyle(code: string): { readonly number: number | null; readonly letter: string } {
  const [, number, letter = ""] = /^(\d+)([A-Z]?)/.exec(code) ?? [];
  return { number: number === undefined ? null : Number(number), letter };
}
