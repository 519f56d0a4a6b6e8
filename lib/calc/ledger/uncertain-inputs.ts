import type { Range } from "../errors";
import { ebc, fraction, ph } from "../units";
import { DISTILLED_WATER_PH_RANGE } from "../water/mashed-malt";
import { acidityOf } from "./acidity-of";
import type { Equipment } from "./equipment";
import type { FigureName } from "./figure-correlation";
import { FIGURES } from "./figures";
import type { Fermentable, Recipe } from "./recipe";
import { FERMENTABLE_COLOUR_RANGE } from "./recipe-numbers";

/** What is moved. */
export interface Moved {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
}

/** One thing that is not exactly known. */
export interface UncertainInput {
  readonly name: FigureName | "malt extract" | "malt colour" | "malt acidity" | "alpha acids" | "attenuation";
  /** Moves it by so many standard uncertainties, as far as its bounds allow. */
  readonly move: (brew: Moved, deviations: number) => Moved;
  /** How many standard uncertainties it moves up for one, and down: less than 1 where a bound cuts it short. */
  readonly reach: { readonly up: number; readonly down: number };
}

/** Raw materials, relative standard uncertainty of a lot against its class. Common practice, no source. */
const RAW_MATERIAL = { extract: 0.01, alpha: 0.06, colour: 0.08 } as const;

/** Standard uncertainty of the distilled-water pH of a malt from its class. Common practice, from memory. */
const MALT_PH_SD = 0.08;

/** Share of a yeast's attenuation range that one standard deviation covers: the range is taken as ±2 sd. */
const ATTENUATION_RANGE_SHARE = 1 / 4;

const WHOLE = { up: 1, down: 1 } as const;

/**
 * Lists what a prediction rests on and how far each may be off.
 *
 * @param a.shiftSd - Standard uncertainty of what the mash adds to the attenuation.
 * @returns Each thing with an uncertainty, and how to move it.
 * @source Figures carry their own uncertainty; raw materials docs/sources.md#trade-practice
 */
export function uncertainInputs(a: Moved & { readonly shiftSd: number }): UncertainInput[] {
  const { recipe, equipment, shiftSd } = a;
  const { yeast } = recipe;
  const attenuationSd = Math.hypot((yeast.attenuationHigh - yeast.attenuationLow) * ATTENUATION_RANGE_SHARE, shiftSd);
  return [...figures(equipment), ...materials(), ...(attenuationSd > 0 ? [attenuation(attenuationSd)] : [])];
}

function figures(equipment: Equipment): UncertainInput[] {
  return FIGURES.flatMap(({ name, range, of, withFigure }) => {
    const { value, sd } = of(equipment);
    if (sd <= 0) return [];
    const movedBy = (deviations: number): number => Math.min(range.max, Math.max(range.min, value + sd * deviations));
    const reach = { up: (movedBy(1) - value) / sd, down: (value - movedBy(-1)) / sd };
    if (reach.up + reach.down <= 0) return [];
    const move = (brew: Moved, deviations: number): Moved => ({
      ...brew,
      equipment: withFigure(brew.equipment, { ...of(brew.equipment), value: movedBy(deviations) }),
    });
    return [{ name, move, reach }];
  });
}

/** Lots of one delivery are off together, so each property moves in all rows at once. */
function materials(): UncertainInput[] {
  const extract = rows((row, by) =>
    row.kind === "sugar" ? row : { ...row, extract: within(fraction, row.extract * (1 + by * RAW_MATERIAL.extract)) },
  );
  const colour = rows((row, by) =>
    row.kind === "sugar"
      ? row
      : { ...row, colour: within(ebc, row.colour * (1 + by * RAW_MATERIAL.colour), FERMENTABLE_COLOUR_RANGE) },
  );
  const acidity = rows((row, by) => {
    if (row.station !== "mash") return row;
    const known = acidityOf(row);
    const distilledWaterPh = within(ph, known.distilledWaterPh + by * MALT_PH_SD, DISTILLED_WATER_PH_RANGE);
    return { ...row, acidity: { ...known, distilledWaterPh } };
  });
  const alpha = (brew: Moved, by: number): Moved => ({
    ...brew,
    recipe: {
      ...brew.recipe,
      hops: brew.recipe.hops.map((hop) => ({
        ...hop,
        alpha: within(fraction, hop.alpha * (1 + by * RAW_MATERIAL.alpha)),
      })),
    },
  });
  return [
    { name: "malt extract", move: extract, reach: WHOLE },
    { name: "malt colour", move: colour, reach: WHOLE },
    { name: "malt acidity", move: acidity, reach: WHOLE },
    { name: "alpha acids", move: alpha, reach: WHOLE },
  ];
}

function rows(change: (row: Fermentable, deviations: number) => Fermentable): UncertainInput["move"] {
  return (brew, deviations) => ({
    ...brew,
    recipe: { ...brew.recipe, fermentables: brew.recipe.fermentables.map((row) => change(row, deviations)) },
  });
}

const within = <Q extends number>(
  make: { (value: number): Q; readonly range: Range },
  value: number,
  { min, max }: Range = make.range,
): Q => make(Math.min(max, Math.max(min, value)));

/** What the yeast and the mash each leave open moves the same number, so both are one input. */
function attenuation(sd: number): UncertainInput {
  return {
    name: "attenuation",
    reach: WHOLE,
    move: (brew, deviations) => {
      const { yeast } = brew.recipe;
      const by = sd * deviations;
      return {
        ...brew,
        recipe: {
          ...brew.recipe,
          yeast: {
            ...yeast,
            attenuationLow: within(fraction, yeast.attenuationLow + by),
            attenuationHigh: within(fraction, yeast.attenuationHigh + by),
          },
        },
      };
    },
  };
}
