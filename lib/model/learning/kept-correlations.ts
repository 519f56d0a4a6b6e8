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
  // A trial that is taken twice says the same of a pair again.
  const told = new Set(found.map(pairOf));
  const kept =
    before.correlations?.filter((tie) => isSame(tie.one) && isSame(tie.other) && !told.has(pairOf(tie))) ?? [];
  const { correlations: _old, ...rest } = equipment;
  const all = [...kept, ...found];
  return all.length === 0 ? rest : { ...rest, correlations: all };
}

function pairOf({ one, other }: FigureCorrelation): string {
  return [one, other].sort().join();
}
