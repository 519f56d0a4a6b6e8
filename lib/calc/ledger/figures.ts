import type { Range } from "../errors";
import type { Equipment, Figure } from "./equipment";
import {
  CHILLER_FIGURES,
  EQUIPMENT_FIGURES,
  FERMENTER_FIGURES,
  KETTLE_FIGURES,
  LAUTER_FIGURES,
  type Figures,
} from "./equipment-numbers";
import type { FigureName } from "./figure-correlation";

/** One figure of an equipment: what it is called, what it can be, and where it stands. */
export interface FigurePlace {
  readonly name: FigureName;
  readonly label: string;
  readonly range: Range;
  readonly of: (equipment: Equipment) => Figure<number>;
  /**
   * The value has to lie within the range, which the type then keeps. A figure that is set anew is tied to no other any
   * more: what was known of both together was known of the one before.
   */
  readonly withFigure: (equipment: Equipment, figure: Figure<number>) => Equipment;
}

/** Every figure of an equipment, in the order of the type. */
export const FIGURES: readonly FigurePlace[] = [
  ...places("kettle", KETTLE_FIGURES),
  ...places("lauter", LAUTER_FIGURES),
  ...EQUIPMENT_FIGURES.map(([, label, range]): FigurePlace => ({
    name: "hopAbsorption",
    label,
    range,
    of: (equipment) => equipment.hopAbsorption,
    withFigure: (equipment, figure) => ({
      ...untied(equipment, "hopAbsorption"),
      hopAbsorption: figure as Equipment["hopAbsorption"],
    }),
  })),
  ...places("chiller", CHILLER_FIGURES),
  ...places("fermenter", FERMENTER_FIGURES),
];

type Part = "kettle" | "lauter" | "chiller" | "fermenter";

function places<P extends Part>(part: P, figures: Figures<Equipment[P]>): FigurePlace[] {
  return figures.map(([field, label, range]) => {
    // Part and field of a figure make its name.
    const name = `${part}.${field}` as FigureName;
    return {
      name,
      label,
      range,
      of: (equipment) => equipment[part][field] as Figure<number>,
      withFigure: (equipment, figure) => {
        return { ...untied(equipment, name), [part]: { ...equipment[part], [field]: figure } };
      },
    };
  });
}

function untied(equipment: Equipment, name: FigureName): Equipment {
  const { correlations, ...rest } = equipment;
  const left = correlations?.filter(({ one, other }) => one !== name && other !== name) ?? [];
  return left.length === 0 ? rest : { ...rest, correlations: left };
}
