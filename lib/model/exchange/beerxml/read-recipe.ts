import { degreesPlato, ebcFromSrm, lovibond, minutes, specificGravity, srm, srmFromLovibond } from "@/lib/calc/units";
import { specificGravityToPlato } from "@/lib/calc/gravity";
import { AMBIENT_FIELDS } from "../../ambient-fields";
import { MASH_STEP_FIELDS, PACKAGING_FIELDS, RECIPE_FIELDS, YEAST_FIELDS } from "../../recipe-fields";
import type { FieldCursor } from "../field-cursor";
import { STYLE_GUIDE, styleNamed } from "../known-names";
import { primingNamed } from "../priming-names";
import { EFFICIENCY, NOTES, PRE_BOIL, TITLE } from "../stated-fields";
import type { StatedFigures, StatedRecipe } from "../stated-recipe";
import { ofPercent, readBoolean, statedNumber, takeNumber } from "./leaf";
import { readFermentables, readHops, readMiscs, readWaters, readYeasts, standOfHops } from "./read-rows";

/** Reads one recipe; null where it lacks what no recipe can do without, and the log says what. */
export function readBeerXmlRecipe(recipe: FieldCursor): StatedRecipe | null {
  const title = recipe.at("NAME").takeText(TITLE);
  const batch = takeNumber(recipe.at("BATCH_SIZE"), RECIPE_FIELDS.intoFermenter);
  if (title === null || batch === null) return null;
  recipe.at("TYPE").keep("this book tells it from the fermentables");
  const fermentables = readFermentables(recipe.at("FERMENTABLES"));
  const hops = readHops(recipe.at("HOPS"), recipe.at("BOIL_TIME"));
  const extras = readMiscs(recipe.at("MISCS"));
  const gristKg = fermentables.filter(({ station }) => station === "mash").reduce((sum, { kg }) => sum + kg, 0);
  return {
    title,
    batch,
    notes: recipe.at("NOTES").takeText(NOTES) ?? "",
    style: readStyle(recipe.at("STYLE")),
    topUp: takeNumber(recipe.at("EQUIPMENT", "TOP_UP_WATER"), RECIPE_FIELDS.topUp) ?? RECIPE_FIELDS.topUp.make(0),
    preBoil: takeNumber(recipe.at("BOIL_SIZE"), PRE_BOIL),
    boil: takeNumber(recipe.at("BOIL_TIME"), RECIPE_FIELDS.boil) ?? noBoil(recipe),
    efficiency: takeNumber(recipe.at("EFFICIENCY"), EFFICIENCY, ofPercent),
    ...readMash(recipe.at("MASH"), gristKg),
    stand: standOfHops(hops, recipe.log),
    fermentables,
    hops,
    water: readWaters(recipe.at("WATERS")),
    ...extras,
    yeast: readYeast(recipe),
    packaging: readPackaging(recipe),
    figures: readFigures(recipe),
  };
}

function noBoil(recipe: FieldCursor) {
  recipe.log.derive("A boil of 60 min, since the file states none.");
  return minutes(60);
}

/** The first infusion says how thick the mash is: its litres over the kilograms of grist. */
function readMash(mash: FieldCursor, gristKg: number): Pick<StatedRecipe, "grain" | "thickness" | "mash"> {
  const rests = mash.at("MASH_STEPS").items.flatMap((step) => {
    if (step.node === null) return [];
    const rest = step.log.whole(step.node, () => {
      const at = takeNumber(step.at("STEP_TEMP"), MASH_STEP_FIELDS.celsius);
      const length = takeNumber(step.at("STEP_TIME"), MASH_STEP_FIELDS.minutes);
      return at === null || length === null ? null : { celsius: at, minutes: length };
    });
    if (rest === null) return [];
    step.at("NAME").keep("rests have no names here");
    step.at("TYPE").keep("every rest is reached by heating or infusion, as the kettle can");
    return [rest];
  });
  return {
    grain: takeNumber(mash.at("GRAIN_TEMP"), AMBIENT_FIELDS.grain),
    thickness: readThickness(mash, gristKg),
    mash: rests,
  };
}

function readThickness(mash: FieldCursor, gristKg: number): StatedRecipe["thickness"] {
  const [first] = mash.at("MASH_STEPS").items;
  const amount = first?.at("INFUSE_AMOUNT");
  if (amount === undefined || gristKg === 0 || amount.text === null || Number(amount.text) === 0) return null;
  return takeNumber(amount, RECIPE_FIELDS.thickness, (litres) => Number((litres / gristKg).toPrecision(8)));
}

function readYeast(recipe: FieldCursor): StatedRecipe["yeast"] {
  const temperature = takeNumber(recipe.at("PRIMARY_TEMP"), YEAST_FIELDS.celsius);
  return { ...readYeasts(recipe.at("YEASTS")), ...(temperature === null ? {} : { celsius: temperature }) };
}

function readStyle(style: FieldCursor): string | null {
  const code = `${style.at("CATEGORY_NUMBER").text ?? ""}${style.at("STYLE_LETTER").text ?? ""}`;
  const found = styleNamed({
    guide: style.at("STYLE_GUIDE").text ?? "",
    code,
    name: style.at("NAME").text ?? "",
  });
  if (found === null) return null;
  for (const tag of ["NAME", "CATEGORY_NUMBER", "STYLE_LETTER", "STYLE_GUIDE"]) {
    style.at(tag).take(`the style ${found.code} of ${STYLE_GUIDE}`);
  }
  return found.code;
}

function readPackaging(recipe: FieldCursor): StatedRecipe["packaging"] {
  const carbonation = takeNumber(recipe.at("CARBONATION"), PACKAGING_FIELDS.carbonation);
  const warmest = takeNumber(recipe.at("CARBONATION_TEMP"), PACKAGING_FIELDS.warmest);
  const forced = recipe.at("FORCED_CARBONATION");
  const isForced = readBoolean(forced);
  if (isForced !== null) forced.take(isForced ? "in a keg, from a cylinder" : "primed, in bottles");
  const sugar = recipe.at("PRIMING_SUGAR_NAME");
  const priming = isForced === true ? null : primingNamed(sugar.text ?? "");
  if (priming !== null) sugar.take();
  return {
    ...(carbonation === null ? {} : { carbonation }),
    ...(warmest === null ? {} : { warmest }),
    ...(isForced === true ? { container: "keg", priming: null } : {}),
    ...(priming === null ? {} : { priming }),
  };
}

const platoOf = (sg: number): number => specificGravityToPlato(specificGravity(sg));

type DisplayUnits = Readonly<Record<string, (value: number) => number>>;

/** Units of the appendix, in small letters; without one the unit is that of the standard itself. */
const GRAVITY_UNITS: DisplayUnits = { "": platoOf, sg: platoOf, plato: (value) => degreesPlato(value) };
const COLOUR_UNITS: DisplayUnits = {
  "": (value) => ebcFromSrm(srm(value)),
  srm: (value) => ebcFromSrm(srm(value)),
  ebc: (value) => value,
  l: (value) => ebcFromSrm(srmFromLovibond(lovibond(value))),
};
const PLAIN_UNITS: DisplayUnits = {
  "": (value) => value,
  ibu: (value) => value,
  ibus: (value) => value,
  "%": (value) => value,
};

/** Estimates first, which the file's own recipe comes to; what was measured where there is none. */
function readFigures(recipe: FieldCursor): StatedFigures {
  return {
    originalExtract: displayed(recipe.at("EST_OG"), GRAVITY_UNITS) ?? statedNumber(recipe.at("OG"), platoOf),
    finalExtract: displayed(recipe.at("EST_FG"), GRAVITY_UNITS) ?? statedNumber(recipe.at("FG"), platoOf),
    bitterness: displayed(recipe.at("IBU"), PLAIN_UNITS),
    colour: displayed(recipe.at("EST_COLOR"), COLOUR_UNITS),
    alcohol: displayed(recipe.at("EST_ABV"), PLAIN_UNITS),
  };
}

const DISPLAYED = /^(\d+(?:\.\d+)?)\s*([a-z]*|%)$/i;

/** "6.5 srm", "1.052 sg": the appendix writes figures for display, with their units. */
function displayed(cursor: FieldCursor, units: DisplayUnits): number | null {
  const [, number, unit = ""] = DISPLAYED.exec(cursor.text ?? "") ?? [];
  const known = unit.toLowerCase();
  const convert = Object.hasOwn(units, known) ? units[known] : undefined;
  if (number === undefined || convert === undefined) return null;
  try {
    const value = convert(Number(number));
    cursor.take("compared with this book's own figure");
    return value;
  } catch {
    // A figure for display outside any beer is kept, not compared.
    return null;
  }
}
