import { FIGURES, type Equipment, type FigureCorrelation, type FigureName } from "@/lib/calc/ledger";

/**
 * A profile after some of its figures were set anew. What was known of two figures together holds as long as both are as
 * they were.
 *
 * @param found - What the new figures are tied by among themselves.
 */
export function withKeptCorrelations(
  equipment: Equipment,
  before: Equipment,
  found: readonly FigureCorrelation[] = [],
): Equipment {
  const isSame = (name: FigureName): boolean => {
    const of = FIGURES.find((figure) => figure.name === name)?.of;
    return of !== undefined && of(equipment).value === of(before).value && of(equipment).sd === of(before).sd;
  };
  const kept = before.correlations?.filter(({ one, other }) => isSame(one) && isSame(other)) ?? [];
  const { correlations: _old, ...rest } = equipment;
  const all = [...kept, ...found];
  return all.length === 0 ? rest : { ...rest, correlations: all };
}
