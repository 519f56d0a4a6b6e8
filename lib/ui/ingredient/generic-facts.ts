import type { GenericIngredient } from "@/lib/model/generic-ingredients";
import { HOP_VARIETIES } from "@/lib/model/hop-varieties";
import { maltFacts } from "@/lib/model/malt-groups";
import { YEAST_CLASSES } from "@/lib/model/yeast-classes";
import type { IngredientFigure } from "./ingredient-figures";

/** What the generic list knows besides, and no calculation takes. */
export function genericFacts({ name, what }: GenericIngredient): readonly IngredientFigure[] {
  if (what.kind === "hop") return hopFacts(name);
  if (what.kind === "yeast") return yeastFacts(name);
  const facts = what.kind === "fermentable" ? maltFacts(name) : null;
  if (facts === null) return [];
  const means = "Power of its enzymes to turn starch into sugar, from memory.";
  return [{ label: "Diastatic power", means, value: facts.lintner, dimension: null, unit: "°Lintner" }];
}

function hopFacts(name: string): readonly IngredientFigure[] {
  const hop = HOP_VARIETIES.find((each) => each.name === name);
  if (hop === undefined) return [];
  const { low, high } = hop.oilMlPer100G;
  const oil = `${String(low)} to ${String(high)} mL in 100 g`;
  return [
    { label: "Beta acids", means: "Bitter only once they are oxidised.", value: hop.beta, dimension: "fraction" },
    { label: "Cohumulone", means: "Share of the alpha acids.", value: hop.cohumulone, dimension: "fraction" },
    { label: "Total oil", means: "What aroma comes from.", value: oil, dimension: null },
    { label: "Keeping", means: "How well it keeps its alpha acids.", value: hop.keeping, dimension: null },
  ];
}

function yeastFacts(name: string): readonly IngredientFigure[] {
  const yeast = YEAST_CLASSES.find((each) => each.name === name);
  if (yeast === undefined) return [];
  const means = "How soon it clumps together and leaves the beer.";
  return [{ label: "Flocculation", means, value: yeast.flocculation, dimension: null }];
}
