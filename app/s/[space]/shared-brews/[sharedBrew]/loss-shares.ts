import type { ExtractAccount, ExtractLineId } from "@/lib/calc/compare";

export type LossPattern = "full" | "hatched" | "dotted" | "empty";

/** The parts into which the weighed-out extract falls on its way to the fermenter, each with its own pattern. */
export const LOSS_PARTS = [
  { id: "fermenter", label: "into the fermenter", pattern: "full" },
  { id: "grain", label: "left in the grain", pattern: "hatched" },
  { id: "undissolved", label: "not dissolved", pattern: "dotted" },
  { id: "left", label: "left with trub and hoses", pattern: "empty" },
] as const satisfies readonly {
  readonly id: ExtractLineId;
  readonly label: string;
  readonly pattern: LossPattern;
}[];

export interface LossShare {
  readonly part: (typeof LOSS_PARTS)[number];
  readonly planned: number;
  readonly measured: number | null;
}

export function lossShares({ lines }: ExtractAccount): readonly LossShare[] {
  return LOSS_PARTS.flatMap((part) => {
    const line = lines.find(({ id }) => id === part.id);
    return line === undefined ? [] : [{ part, planned: line.plannedShare, measured: line.measuredShare }];
  });
}
