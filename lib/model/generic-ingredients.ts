import { fraction, type Fraction } from "@/lib/calc/units";
import { ACID_SOLUTIONS, SALTS, type Salt } from "@/lib/calc/water";
import { HOP_VARIETIES, type HopVariety } from "./hop-varieties";
import type { KindAndFigures } from "./ingredient";
import type { IngredientKind } from "./ingredient-kinds";
import { TYPICAL_FERMENTABLES, type TypicalFermentable } from "./ingredients";
import { nameKey } from "./lot";
import { maltFacts } from "./malt-groups";
import { SALT_FIELDS } from "./recipe-fields";
import { YEAST_CLASSES, type YeastClass } from "./yeast-classes";

/** Where the figures of a generic ingredient come from. */
export type FigureSource = "memory" | "practice" | "published";

/** An ingredient that the program knows without a club. */
export interface GenericIngredient {
  /** In the address of its page: "hop-cascade". */
  readonly slug: string;
  readonly name: string;
  /** A word for what sort it is: "caramel", "dual purpose", "lager". */
  readonly group: string;
  readonly what: KindAndFigures;
  readonly source: FigureSource;
}

/** Formulas settle these two; the rest of the sugars are from memory. */
const BY_FORMULA: readonly string[] = ["Sucrose", "Dextrose monohydrate"];

function fermentable({ name, ...figures }: TypicalFermentable): GenericIngredient {
  return {
    slug: slugOf("fermentable", name),
    name,
    group: maltFacts(name)?.group ?? figures.kind,
    what: { kind: "fermentable", figures },
    source: fermentableSource(name, figures.kind),
  };
}

function fermentableSource(name: string, kind: TypicalFermentable["kind"]): FigureSource {
  if (BY_FORMULA.includes(name)) return "published";
  return kind === "malt extract" || name === "Acidulated malt" ? "practice" : "memory";
}

function hop({ name, purpose, alphaLow, alphaHigh, lossIn6Months }: HopVariety): GenericIngredient {
  return {
    slug: slugOf("hop", name),
    name,
    group: purpose === "dual" ? "dual purpose" : purpose,
    what: { kind: "hop", figures: { alphaLow, alphaHigh, lossIn6Months } },
    source: "memory",
  };
}

function yeast({ name, group, trait, attenuationLow, attenuationHigh, celsiusLow, celsiusHigh }: YeastClass) {
  return {
    slug: slugOf("yeast", name),
    name,
    group: trait === null ? group : `${group}, ${trait}`,
    what: { kind: "yeast", figures: { attenuationLow, attenuationHigh, celsiusLow, celsiusHigh } },
    source: "practice",
  } as const satisfies GenericIngredient;
}

/** Chemical formulas, as the label of a pure salt states them. */
const SALT_FORMULA: Readonly<Record<Salt, string>> = {
  gypsum: "CaSO₄ · 2 H₂O",
  calciumChlorideDihydrate: "CaCl₂ · 2 H₂O",
  epsomSalt: "MgSO₄ · 7 H₂O",
  tableSalt: "NaCl",
  bakingSoda: "NaHCO₃",
  chalk: "CaCO₃",
  slakedLime: "Ca(OH)₂",
};

function salt(id: Salt): GenericIngredient {
  const name = SALT_FIELDS[id].label;
  return {
    slug: slugOf("salt", name),
    name,
    group: SALT_FORMULA[id],
    what: { kind: "salt", figures: { salt: id } },
    source: "published",
  };
}

type Solution = (typeof ACID_SOLUTIONS)[keyof typeof ACID_SOLUTIONS];

function acid({ acid: id, massFraction, density }: Solution): GenericIngredient {
  const percent = Math.round(massFraction * 100);
  const name = `${id.charAt(0).toUpperCase()}${id.slice(1)} acid ${String(percent)} %`;
  return {
    slug: slugOf("acid", name),
    name,
    group: `${id} acid`,
    what: { kind: "acid", figures: { acid: id, massFraction, density } },
    source: id === "lactic" ? "practice" : "published",
  };
}

export const GENERIC_INGREDIENTS: readonly GenericIngredient[] = [
  ...TYPICAL_FERMENTABLES.map(fermentable),
  ...HOP_VARIETIES.map(hop),
  ...YEAST_CLASSES.map(yeast),
  ...SALTS.map(salt),
  ...Object.values(ACID_SOLUTIONS).map(acid),
];

export function findGeneric(slug: string): GenericIngredient | null {
  return GENERIC_INGREDIENTS.find((each) => each.slug === slug) ?? null;
}

const LOSS_BY_NAME: ReadonlyMap<string, Fraction> = new Map(
  HOP_VARIETIES.map(({ name, lossIn6Months }) => [nameKey(name), fraction(lossIn6Months)]),
);

/** The generic ingredient of a kind with this name, in whatever letters it is written. */
export function genericNamed(kind: IngredientKind, name: string): GenericIngredient | null {
  const wanted = nameKey(name);
  return GENERIC_INGREDIENTS.find((each) => each.what.kind === kind && nameKey(each.name) === wanted) ?? null;
}

/** What a hop loses in six months by the generic list; null for a variety that is not in it. */
export function genericLoss(name: string): Fraction | null {
  return LOSS_BY_NAME.get(nameKey(name)) ?? null;
}

function slugOf(kind: IngredientKind, name: string): string {
  const plain = name
    .normalize("NFD")
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replaceAll(/^-|-$/g, "");
  return `${kind}-${plain}`;
}
