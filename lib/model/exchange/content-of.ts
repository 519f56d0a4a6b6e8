import type { z } from "zod";
import type { Equipment, Packaging, Recipe, Yeast } from "@/lib/calc/ledger";
import {
  celsius,
  degreesPlato,
  fraction,
  milligramsPerLitre,
  millionPerMlPlato,
  minutes,
  volumesCo2,
  type MillionPerMlPlato,
} from "@/lib/calc/units";
import type { Ions } from "@/lib/calc/water";
import { USUAL_DAY } from "../ambient-fields";
import { recipeContent, recipeInput, type RecipeContent } from "../recipe-content";
import { YEAST_FIELDS } from "../recipe-fields";
import { derivedKettle } from "./derived-kettle";
import { yeastClassNamed } from "./known-names";
import type { ReadingLog } from "./report";
import type { StatedRecipe } from "./stated-recipe";

/** How far a yeast's attenuation lies around a single stated figure. Common practice, no source. */
const ATTENUATION_SPREAD = 0.04;
const USUAL_PITCH = millionPerMlPlato(0.75);
const USUAL_REST = { celsius: celsius(66), minutes: minutes(60) };

const NONE = milligramsPerLitre(0);
const NO_IONS: Ions = {
  calcium: NONE,
  magnesium: NONE,
  sodium: NONE,
  sulfate: NONE,
  chloride: NONE,
  bicarbonate: NONE,
};

export type ContentOutcome =
  { readonly ok: true; readonly content: RecipeContent } | { readonly ok: false; readonly problems: readonly string[] };

/** Makes what a revision holds of a stated recipe, for a kettle of the club or for one derived from the file. */
export function contentOf(stated: StatedRecipe, kettle: Equipment | null, log: ReadingLog): ContentOutcome {
  const recipe = recipeOf(stated, log);
  const checked = recipeInput.safeParse(recipe);
  if (!checked.success) return { ok: false, problems: messagesOf(checked.error) };
  const found = kettle === null ? derivedKettle(stated, recipe) : { equipment: kettle, derived: [] };
  found.derived.forEach((sentence) => log.derive(sentence));
  const parsed = recipeContent.safeParse({
    recipe,
    entered: {},
    style: stated.style,
    notes: stated.notes,
    writtenOn: {
      name: found.equipment.name,
      equipment: found.equipment,
      ambient: { ...USUAL_DAY, grain: stated.grain ?? USUAL_DAY.grain },
    },
  });
  return parsed.success ? { ok: true, content: parsed.data } : { ok: false, problems: messagesOf(parsed.error) };
}

function messagesOf(error: z.ZodError): readonly string[] {
  return [...new Set(error.issues.map(({ message }) => message))];
}

function recipeOf(stated: StatedRecipe, log: ReadingLog): Recipe {
  return {
    intoFermenter: stated.batch,
    topUp: stated.topUp,
    thickness: stated.thickness,
    mash: mashOf(stated, log),
    mashes: 1,
    boil: stated.boil,
    stand: stated.stand,
    fermentables: stated.fermentables,
    hops: stated.hops,
    water: { source: stated.water ?? usualWater(log), salts: stated.salts, acid: stated.acid },
    yeast: yeastOf(stated, log),
    packaging: packagingOf(stated, log),
  };
}

function mashOf({ mash }: StatedRecipe, log: ReadingLog): Recipe["mash"] {
  if (mash.length > 0) return mash;
  log.derive("A mash of 60 min at 66 °C, since the file states none.");
  return [USUAL_REST];
}

function usualWater(log: ReadingLog): Recipe["water"]["source"] {
  log.derive("Water without any salts, since the file states no analysis.");
  return NO_IONS;
}

function yeastOf({ yeast, batch, figures }: StatedRecipe, log: ReadingLog): Yeast {
  const name = yeast.name ?? "Yeast of the file";
  const known = yeastClassNamed(name);
  const [low, high] = attenuationOf(yeast, name, log);
  const temperature =
    yeast.celsius ?? (known === null ? celsius(19) : celsius((known.celsiusLow + known.celsiusHigh) / 2));
  if (yeast.celsius === undefined) log.derive(`Fermentation at ${String(temperature)} °C, since the file states none.`);
  return {
    name,
    attenuationLow: attenuationWithin(low),
    attenuationHigh: attenuationWithin(high),
    pitch: yeast.pitch ?? pitchOf(yeast.cells, batch, figures.originalExtract, log),
    celsius: temperature,
  };
}

/** The range stated, a single figure with room to either side, the yeast class of the same name, or a usual one. */
function attenuationOf(yeast: StatedRecipe["yeast"], name: string, log: ReadingLog): readonly [number, number] {
  const { attenuation, attenuationLow, attenuationHigh } = yeast;
  if (attenuationLow !== undefined && attenuationHigh !== undefined) return [attenuationLow, attenuationHigh];
  if (attenuation !== undefined) {
    log.derive(`Attenuation of ${name} 4 % to either side of the ${percentOf(attenuation)} stated.`);
    return [attenuation - ATTENUATION_SPREAD, attenuation + ATTENUATION_SPREAD];
  }
  const known = yeastClassNamed(name);
  const [low, high] = known === null ? [0.73, 0.8] : [known.attenuationLow, known.attenuationHigh];
  log.derive(`Attenuation of ${name} ${percentOf(low)} to ${percentOf(high)}, since the file states none.`);
  return [low, high];
}

function attenuationWithin(value: number): Yeast["attenuationLow"] {
  const { min, max } = YEAST_FIELDS.attenuationLow;
  return fraction(Number(Math.min(max, Math.max(min, value)).toFixed(9)));
}

/** Billions of cells in so many litres of so many °P, as millions for each mL and °P. */
function pitchOf(cells: number | null, batchL: number, plato: number | null, log: ReadingLog): MillionPerMlPlato {
  const { min, max } = YEAST_FIELDS.pitch;
  const rate = cells === null || plato === null ? Number.NaN : cells / (batchL * degreesPlato(plato));
  if (rate >= min && rate <= max) return millionPerMlPlato(rate);
  log.derive("A pitch of 0.75 million cells for each mL and °P, since the file states none that makes sense.");
  return USUAL_PITCH;
}

function packagingOf({ packaging }: StatedRecipe, log: ReadingLog): Packaging {
  const { carbonation, container = "bottle", priming, warmest = celsius(20) } = packaging;
  if (carbonation === undefined) log.derive("Carbonation of 2.4 volumes, since the file states none.");
  const wanted = carbonation ?? volumesCo2(2.4);
  return {
    container,
    carbonation: wanted,
    priming: priming === undefined ? (container === "bottle" ? "sucrose" : null) : priming,
    warmest,
    // A usual bottle; whoever wants more looks at what the maker of theirs says.
    rated: volumesCo2(3),
  };
}

const percentOf = (share: number): string => `${String(Number((100 * share).toPrecision(3)))} %`;
