import type { Ledger } from "../ledger";
import type { Readings, ReadValues } from "./latest-readings";
import { measuredWort } from "./measured-wort";
import type { PlannedBrew } from "./planned-brew";
import { propagate } from "./propagate";

/** A line of the account holds what is there, gains what is added, or loses what goes. */
export interface ExtractLine {
  readonly id: ExtractLineId;
  readonly label: string;
  readonly effect: "holds" | "gains" | "loses";
  readonly plannedKg: number;
  /** Share of all extract that was weighed out, fraction. */
  readonly plannedShare: number;
  /** null where the readings do not reach. */
  readonly measuredKg: number | null;
  readonly measuredSd: number | null;
  readonly measuredShare: number | null;
}

export interface ExtractAccount {
  /** All extract that was weighed out: in the grist and in what the kettle gets. */
  readonly weighedOutKg: number;
  readonly lines: readonly ExtractLine[];
}

const LINES = {
  potential: { label: "In the grist", effect: "holds" },
  grain: { label: "Left in the grain or not dissolved", effect: "loses" },
  beforeBoil: { label: "Before the boil", effect: "holds" },
  added: { label: "Sugar and malt extract added", effect: "gains" },
  boil: { label: "Not accounted for in the boil", effect: "loses" },
  endOfBoil: { label: "End of boil", effect: "holds" },
  left: { label: "Left with trub, hops and hoses", effect: "loses" },
  fermenter: { label: "In the fermenter", effect: "holds" },
  fermented: { label: "Fermented", effect: "loses" },
  residual: { label: "Left in the beer", effect: "holds" },
} as const;

export type ExtractLineId = keyof typeof LINES;

type Amounts = Readonly<Record<ExtractLineId, number | null>>;

/**
 * Follows the extract from the grist to the beer: what is there at each station, and what was lost on the way.
 *
 * Grist and additions count as weighed out by the plan; the rest is measured where volume and gravity were read. Losses
 * are differences, so the lines add up exactly, planned and measured.
 *
 * @returns Lines in the order of the process.
 * @source Mass balance (docs/sources.md#mass-balance); Balling (docs/sources.md#balling-1865)
 */
export function extractAccount(ledger: Ledger, plan: PlannedBrew, readings: Readings): ExtractAccount {
  const weighedOutKg = plan.potentialKg + plan.addedExtractKg;
  const planned = plannedAmounts(ledger, plan);
  // The keys of a constant object are what they are; Object.keys only forgets them.
  const ids = Object.keys(LINES) as ExtractLineId[];
  const lines = ids.map((id): ExtractLine => {
    const plannedKg = planned[id] ?? 0;
    const measured = propagate(readings, (read) => measuredAmounts(plan, read)[id]);
    return {
      id,
      ...LINES[id],
      plannedKg,
      plannedShare: plannedKg / weighedOutKg,
      measuredKg: measured === null ? null : measured.value,
      measuredSd: measured === null ? null : measured.sd,
      measuredShare: measured === null ? null : measured.value / weighedOutKg,
    };
  });
  return { weighedOutKg, lines };
}

function plannedAmounts(ledger: Ledger, plan: PlannedBrew): Amounts {
  const beforeBoilKg = plan.dissolvedKg - plan.lauterLostKg;
  const stand = ledger.balances.find(({ station }) => station === "stand");
  const beer = ledger.balances.find(({ station }) => station === "package");
  const inFermenterKg = stand?.out[0]?.extractKg ?? 0;
  return withLosses(plan, {
    beforeBoil: beforeBoilKg,
    endOfBoil: beforeBoilKg + plan.addedExtractKg,
    fermenter: inFermenterKg,
    residual: beer?.in[0]?.extractKg ?? 0,
  });
}

function measuredAmounts(plan: PlannedBrew, read: ReadValues): Amounts {
  const wort = measuredWort(plan, read);
  return withLosses(plan, {
    beforeBoil: wort.beforeBoil?.extractKg ?? null,
    endOfBoil: wort.endOfBoil?.extractKg ?? null,
    fermenter: wort.fermenter?.extractKg ?? null,
    residual: wort.residualKg,
  });
}

function withLosses(
  plan: PlannedBrew,
  held: Readonly<Record<"beforeBoil" | "endOfBoil" | "fermenter" | "residual", number | null>>,
): Amounts {
  const lost = (from: number | null, to: number | null): number | null =>
    from === null || to === null ? null : from - to;
  const intoBoil = held.beforeBoil === null ? null : held.beforeBoil + plan.addedExtractKg;
  return {
    potential: plan.potentialKg,
    grain: lost(plan.potentialKg, held.beforeBoil),
    beforeBoil: held.beforeBoil,
    added: plan.addedExtractKg,
    boil: lost(intoBoil, held.endOfBoil),
    endOfBoil: held.endOfBoil,
    left: lost(held.endOfBoil, held.fermenter),
    fermenter: held.fermenter,
    fermented: lost(held.fermenter, held.residual),
    residual: held.residual,
  };
}
