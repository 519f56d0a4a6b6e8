import { fraction, ph } from "../units";
import { acidityOf } from "./acidity-of";
import type { Equipment, Figure } from "./equipment";
import type { Recipe } from "./recipe";

/** The figures of a kettle that carry an uncertainty, as they stand in the equipment. */
export type FigureName =
  | "kettle.heatShare"
  | "kettle.lossCoefficient"
  | "kettle.boilOff"
  | "kettle.trub"
  | "kettle.transfer"
  | "lauter.absorption"
  | "lauter.deadSpace"
  | "lauter.bypass"
  | "lauter.conversion"
  | "hopAbsorption"
  | "chiller.conductance"
  | "fermenter.left";

/** One thing that is not exactly known, moved up and down. */
export interface UncertainInput {
  readonly name: FigureName | "malt extract" | "malt colour" | "malt acidity" | "alpha acids" | "attenuation";
  readonly up: { readonly recipe: Recipe } | { readonly equipment: Equipment };
  readonly down: { readonly recipe: Recipe } | { readonly equipment: Equipment };
  /** One standard uncertainty over the half-distance that was really moved: above 1 where a bound cut it short. */
  readonly scale: number;
}

/** Raw materials, relative standard uncertainty of a lot against its class. Common practice, no source. */
const RAW_MATERIAL = { extract: 0.01, alpha: 0.06, colour: 0.08 } as const;

/** Standard uncertainty of the distilled-water pH of a malt from its class. Common practice, from memory. */
const MALT_PH_SD = 0.08;

/** Share of a yeast's attenuation range that one standard deviation covers: the range is taken as ±2 sd. */
const ATTENUATION_RANGE_SHARE = 1 / 4;

/**
 * Lists what a prediction rests on and how far each may be off.
 *
 * @param a.shiftSd - Standard uncertainty of what the mash adds to the attenuation.
 * @returns For each figure with an uncertainty, recipe or equipment with it moved up and down.
 * @source Figures carry their own uncertainty; raw materials docs/sources.md#trade-practice
 */
export function uncertainInputs(a: {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly shiftSd: number;
}): UncertainInput[] {
  const { recipe, equipment } = a;
  const found: UncertainInput[] = [];
  const figure: MoveFigure = (name, of, set, most = Infinity) => {
    if (of.sd <= 0) return;
    const up = Math.min(most, of.value + of.sd);
    const down = Math.max(0, of.value - of.sd);
    if (up > down)
      found.push({
        name,
        up: { equipment: set(up) },
        down: { equipment: set(down) },
        scale: (2 * of.sd) / (up - down),
      });
  };
  kettleFigures(equipment, figure);
  lauterFigures(equipment, figure);
  coldFigures(equipment, figure);
  found.push(...materials(recipe), ...attenuationInput(recipe, a.shiftSd));
  return found;
}

type MoveFigure = (name: FigureName, of: Figure<number>, set: (value: number) => Equipment, most?: number) => void;

/** A figure with another value; the bound of its unit was kept by the caller. */
function moved<Q extends number>(of: Figure<Q>, value: number): Figure<Q> {
  return { ...of, value: value as Q };
}

function kettleFigures(equipment: Equipment, figure: MoveFigure): void {
  const { kettle } = equipment;
  const set = (part: Partial<Equipment["kettle"]>): Equipment => ({ ...equipment, kettle: { ...kettle, ...part } });
  figure("kettle.heatShare", kettle.heatShare, (v) => set({ heatShare: moved(kettle.heatShare, v) }), 1);
  figure("kettle.lossCoefficient", kettle.lossCoefficient, (v) =>
    set({ lossCoefficient: moved(kettle.lossCoefficient, v) }),
  );
  figure("kettle.boilOff", kettle.boilOff, (v) => set({ boilOff: moved(kettle.boilOff, v) }));
  figure("kettle.trub", kettle.trub, (v) => set({ trub: moved(kettle.trub, v) }));
  figure("kettle.transfer", kettle.transfer, (v) => set({ transfer: moved(kettle.transfer, v) }));
}

function lauterFigures(equipment: Equipment, figure: MoveFigure): void {
  const { lauter } = equipment;
  const set = (part: Partial<Equipment["lauter"]>): Equipment => ({ ...equipment, lauter: { ...lauter, ...part } });
  figure("lauter.absorption", lauter.absorption, (v) => set({ absorption: moved(lauter.absorption, v) }));
  figure("lauter.deadSpace", lauter.deadSpace, (v) => set({ deadSpace: moved(lauter.deadSpace, v) }));
  figure("lauter.bypass", lauter.bypass, (v) => set({ bypass: moved(lauter.bypass, v) }), 1);
  figure("lauter.conversion", lauter.conversion, (v) => set({ conversion: moved(lauter.conversion, v) }), 1);
}

function coldFigures(equipment: Equipment, figure: MoveFigure): void {
  const { chiller, fermenter, hopAbsorption } = equipment;
  figure("hopAbsorption", hopAbsorption, (v) => ({ ...equipment, hopAbsorption: moved(hopAbsorption, v) }));
  figure("chiller.conductance", chiller.conductance, (v) => ({
    ...equipment,
    chiller: { ...chiller, conductance: moved(chiller.conductance, v) },
  }));
  figure("fermenter.left", fermenter.left, (v) => ({
    ...equipment,
    fermenter: { ...fermenter, left: moved(fermenter.left, v) },
  }));
}

/** Lots of one delivery are off together, so each property moves in all rows at once. */
function materials(recipe: Recipe): UncertainInput[] {
  const scaled = <Q extends number>(make: (value: number) => Q, value: Q, by: number, most: number): Q =>
    make(Math.min(most, value * by));
  const rows = (extract: number, colour: number): Recipe => ({
    ...recipe,
    fermentables: recipe.fermentables.map((row) =>
      row.kind === "sugar"
        ? row
        : {
            ...row,
            extract: scaled(fraction, row.extract, extract, 1),
            colour: scaled((v) => v as typeof row.colour, row.colour, colour, 4000),
          },
    ),
  });
  const hops = (alpha: number): Recipe => ({
    ...recipe,
    hops: recipe.hops.map((hop) => ({ ...hop, alpha: scaled(fraction, hop.alpha, alpha, 1) })),
  });
  const pair = (name: UncertainInput["name"], make: (by: number) => Recipe, sd: number): UncertainInput => ({
    name,
    up: { recipe: make(1 + sd) },
    down: { recipe: make(1 - sd) },
    scale: 1,
  });
  return [
    pair("malt extract", (by) => rows(by, 1), RAW_MATERIAL.extract),
    pair("malt colour", (by) => rows(1, by), RAW_MATERIAL.colour),
    pair("alpha acids", hops, RAW_MATERIAL.alpha),
    {
      name: "malt acidity",
      up: { recipe: withMaltPh(recipe, MALT_PH_SD) },
      down: { recipe: withMaltPh(recipe, -MALT_PH_SD) },
      scale: 1,
    },
  ];
}

/** What the yeast and the mash each leave open moves the same number, so both are one input. */
function attenuationInput(recipe: Recipe, shiftSd: number): UncertainInput[] {
  const { yeast } = recipe;
  const sd = Math.hypot((yeast.attenuationHigh - yeast.attenuationLow) * ATTENUATION_RANGE_SHARE, shiftSd);
  if (sd <= 0) return [];
  const shifted = (by: number): { recipe: Recipe } => ({
    recipe: {
      ...recipe,
      yeast: {
        ...yeast,
        attenuationLow: fraction(Math.max(0, yeast.attenuationLow + by)),
        attenuationHigh: fraction(Math.min(1, yeast.attenuationHigh + by)),
      },
    },
  });
  return [{ name: "attenuation", up: shifted(sd), down: shifted(-sd), scale: 1 }];
}

function withMaltPh(recipe: Recipe, by: number): Recipe {
  return {
    ...recipe,
    fermentables: recipe.fermentables.map((row) => {
      if (row.station !== "mash") return row;
      const acidity = acidityOf(row);
      return { ...row, acidity: { ...acidity, distilledWaterPh: ph(acidity.distilledWaterPh + by) } };
    }),
  };
}
