import type { Fermentable, HopAddition, Recipe } from "@/lib/calc/ledger";
import { platoToSpecificGravity } from "@/lib/calc/gravity";
import { degreesPlato, ebc, lovibondFromSrm, srmFromEbc } from "@/lib/calc/units";
import { IONS, SALTS } from "@/lib/calc/water";
import type { RecipeContent } from "../../recipe-content";
import { STYLES } from "../../styles";
import type { PlainRecord } from "../file-node";
import { nameOfAcid, nameOfSalt, partsOfStyle, STYLE_GUIDE } from "../known-names";
import { nameOfPriming } from "../priming-names";
import { writtenFigures } from "../written-figures";
import { writtenDecimal } from "../written-number";

/** Below it an extract is a powder, above it a syrup. */
const DRY_EXTRACT_MOISTURE = 0.1;
const LAGER_C = 15;

type Figures = ReturnType<typeof writtenFigures>;

/** One recipe as the standard writes it: every required tag, in the standard's own units, sets of records as lists. */
export function writtenBeerXmlRecipe({
  title,
  content,
}: {
  readonly title: string;
  readonly content: RecipeContent;
}): PlainRecord {
  const { recipe, notes, style } = content;
  const figure = writtenFigures(content);
  return {
    NAME: title,
    VERSION: "1",
    TYPE: typeOf(recipe),
    STYLE: styleOf(style, figure),
    EQUIPMENT: equipmentOf(content, figure),
    BATCH_SIZE: writtenDecimal(recipe.intoFermenter),
    BOIL_SIZE: writtenDecimal(figure("kettle.preBoil") ?? recipe.intoFermenter),
    BOIL_TIME: writtenDecimal(recipe.boil),
    EFFICIENCY: writtenDecimal(100 * (figure("fermenter.efficiency") ?? 0)),
    HOPS: recipe.hops.map(hopOf),
    FERMENTABLES: recipe.fermentables.map(fermentableOf),
    MISCS: miscsOf(recipe),
    YEASTS: [yeastOf(recipe)],
    WATERS: [waterOf(recipe, figure)],
    ...(recipe.mash.length === 0 ? {} : { MASH: mashOf(content) }),
    ...(notes === "" ? {} : { NOTES: notes }),
    PRIMARY_TEMP: writtenDecimal(recipe.yeast.celsius),
    ...packagingOf(recipe),
    ...estimatesOf(figure),
  };
}

/** What is predicted: OG, FG and ABV of the standard are measured. Those for display have their units beside them. */
function estimatesOf(figure: Figures): PlainRecord {
  const shown = (tag: string, value: number | null, unit: string): PlainRecord =>
    value === null ? {} : { [tag]: `${writtenDecimal(value)} ${unit}` };
  return {
    ...shown("EST_OG", gravityOf(figure("fermenter.originalExtract")), "sg"),
    ...shown("EST_FG", gravityOf(figure("fermenter.finalExtract")), "sg"),
    ...shown("EST_COLOR", srmOf(figure("fermenter.colour")), "srm"),
    ...optional("IBU", figure("fermenter.bitterness")),
    ...optional("EST_ABV", figure("package.alcohol")),
  };
}

function typeOf({ fermentables }: Recipe): string {
  if (!fermentables.some(({ station }) => station === "mash")) return "Extract";
  return fermentables.some(({ kind }) => kind === "malt extract") ? "Partial Mash" : "All Grain";
}

function optional(tag: string, value: number | null): PlainRecord {
  return value === null ? {} : { [tag]: writtenDecimal(value) };
}

function gravityOf(plato: number | null): number | null {
  return plato === null ? null : platoToSpecificGravity(degreesPlato(plato));
}

function srmOf(colour: number | null): number | null {
  return colour === null ? null : srmFromEbc(ebc(colour));
}

const yes = (isTrue: boolean): string => (isTrue ? "TRUE" : "FALSE");

function hopOf({ name, alpha, grams, use, minutes }: HopAddition): PlainRecord {
  return {
    NAME: name,
    VERSION: "1",
    ALPHA: writtenDecimal(100 * alpha),
    AMOUNT: writtenDecimal(grams / 1000),
    USE: use === "boil" ? "Boil" : use === "stand" ? "Aroma" : "Dry Hop",
    TIME: writtenDecimal(minutes),
  };
}

function fermentableOf(row: Fermentable): PlainRecord {
  const { name, kind, kg, extract, moisture, colour, station } = row;
  const isGrain = kind === "malt" || kind === "adjunct";
  const type = xmlTypeOf(row);
  const colourSrm = srmFromEbc(colour);
  return {
    NAME: name,
    VERSION: "1",
    TYPE: type,
    AMOUNT: writtenDecimal(kg),
    // Of the dry grain; of the weight as it is for all else, adjuncts too.
    YIELD: writtenDecimal(100 * (kind === "malt" ? extract : extract * (1 - moisture))),
    // SRM for liquid extracts alone.
    COLOR: writtenDecimal(type === "Extract" ? colourSrm : lovibondFromSrm(colourSrm)),
    // Both are for grain and adjuncts alone.
    ...(isGrain ? { MOISTURE: writtenDecimal(100 * moisture), RECOMMEND_MASH: yes(station === "mash") } : {}),
  };
}

function xmlTypeOf({ kind, moisture }: Fermentable): string {
  if (kind === "malt") return "Grain";
  if (kind === "adjunct") return "Adjunct";
  if (kind === "sugar") return "Sugar";
  return moisture < DRY_EXTRACT_MOISTURE ? "Dry Extract" : "Extract";
}

function miscsOf({ water: { salts, acid } }: Recipe): readonly PlainRecord[] {
  const agent = (name: string, amount: number, isWeight: boolean): PlainRecord => ({
    NAME: name,
    VERSION: "1",
    TYPE: "Water Agent",
    USE: "Mash",
    TIME: "0",
    AMOUNT: writtenDecimal(amount),
    AMOUNT_IS_WEIGHT: yes(isWeight),
  });
  const saltRows = SALTS.flatMap((salt) => {
    const grams = salts[salt];
    return grams === undefined ? [] : [agent(nameOfSalt(salt), grams / 1000, true)];
  });
  return acid === null ? saltRows : [...saltRows, agent(nameOfAcid(acid.solution), acid.ml / 1000, false)];
}

/** This book knows no species of yeast; a cool one is taken for a lager. */
function yeastOf({ yeast }: Recipe): PlainRecord {
  return {
    NAME: yeast.name,
    VERSION: "1",
    TYPE: yeast.celsius < LAGER_C ? "Lager" : "Ale",
    FORM: "Dry",
    AMOUNT: "0.011",
    AMOUNT_IS_WEIGHT: "TRUE",
    ATTENUATION: writtenDecimal(50 * (yeast.attenuationLow + yeast.attenuationHigh)),
  };
}

function waterOf({ water, intoFermenter }: Recipe, figure: Figures): PlainRecord {
  return {
    NAME: "Brewing water",
    VERSION: "1",
    AMOUNT: writtenDecimal(figure("water.total") ?? intoFermenter),
    ...Object.fromEntries(IONS.map((ion) => [ion.toUpperCase(), writtenDecimal(water.source[ion])])),
  };
}

/** An infusion names its litres; a mash with all the water is heated up, which needs none. */
function mashOf({ recipe: { mash, thickness, fermentables }, writtenOn }: RecipeContent): PlainRecord {
  const gristKg = fermentables.filter(({ station }) => station === "mash").reduce((sum, { kg }) => sum + kg, 0);
  const infused = thickness === null || gristKg === 0 ? null : thickness * gristKg;
  return {
    NAME: "Mash",
    VERSION: "1",
    GRAIN_TEMP: writtenDecimal(writtenOn.ambient.grain),
    MASH_STEPS: mash.map(({ celsius, minutes }, index) => ({
      NAME: `Rest ${String(index + 1)}`,
      VERSION: "1",
      ...(index === 0 && infused !== null
        ? { TYPE: "Infusion", INFUSE_AMOUNT: writtenDecimal(infused) }
        : { TYPE: "Temperature" }),
      STEP_TEMP: writtenDecimal(celsius),
      STEP_TIME: writtenDecimal(minutes),
    })),
  };
}

function packagingOf({ packaging: { carbonation, priming, warmest } }: Recipe): PlainRecord {
  return {
    CARBONATION: writtenDecimal(carbonation),
    FORCED_CARBONATION: yes(priming === null),
    ...(priming === null ? {} : { PRIMING_SUGAR_NAME: nameOfPriming(priming) }),
    CARBONATION_TEMP: writtenDecimal(warmest),
  };
}

function equipmentOf({ recipe, writtenOn: { name, equipment } }: RecipeContent, figure: Figures): PlainRecord {
  const { kettle, mash, lauter } = equipment;
  return {
    NAME: name,
    VERSION: "1",
    BOIL_SIZE: writtenDecimal(figure("kettle.preBoil") ?? recipe.intoFermenter),
    BATCH_SIZE: writtenDecimal(recipe.intoFermenter),
    TUN_VOLUME: writtenDecimal(mash.capacity),
    TOP_UP_WATER: writtenDecimal(recipe.topUp),
    TRUB_CHILLER_LOSS: writtenDecimal(kettle.trub.value + kettle.transfer.value),
    BOIL_TIME: writtenDecimal(recipe.boil),
    LAUTER_DEADSPACE: writtenDecimal(lauter.deadSpace.value),
  };
}

/** A style is required: a recipe without one names none, with its own figures as both ends of every range. */
function styleOf(code: string | null, figure: Figures): PlainRecord {
  const style = code === null ? undefined : STYLES.find((known) => known.code === code);
  const { number, letter } = partsOfStyle(code ?? "");
  const og = gravityOf(figure("fermenter.originalExtract")) ?? 1;
  const fg = gravityOf(figure("fermenter.finalExtract")) ?? 1;
  const [ibu, colour] = [figure("fermenter.bitterness") ?? 0, srmOf(figure("fermenter.colour")) ?? 0];
  const spans = style?.figures ?? null;
  const range = (tag: string, span: { readonly low: number; readonly high: number } | undefined, own: number) => ({
    [`${tag}_MIN`]: writtenDecimal(span?.low ?? own),
    [`${tag}_MAX`]: writtenDecimal(span?.high ?? own),
  });
  return {
    NAME: style?.name ?? "No style",
    CATEGORY: number === null ? "None" : `Category ${String(number)}`,
    VERSION: "1",
    CATEGORY_NUMBER: number === null ? "0" : String(number),
    STYLE_LETTER: letter === "" ? "-" : letter,
    STYLE_GUIDE: style === undefined ? "None" : STYLE_GUIDE,
    TYPE: "Mixed",
    ...range("OG", spans?.originalGravity, og),
    ...range("FG", spans?.finalGravity, fg),
    ...range("IBU", spans?.bitterness, ibu),
    ...range("COLOR", spans?.colour, colour),
  };
}
