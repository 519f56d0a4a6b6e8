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

/** Two figures of one kettle that were learned together and are off together. */
export interface FigureCorrelation {
  readonly one: FigureName;
  readonly other: FigureName;
  /** Correlation coefficient of their errors. */
  readonly coefficient: number;
}
