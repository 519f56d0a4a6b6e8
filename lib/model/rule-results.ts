import type { Ledger, QuantityId } from "@/lib/calc/ledger";
import { IONS } from "@/lib/calc/water";
import type { HeldFigure, SharedBrewRules } from "./shared-brew-rules";

/** A figure of one member's sheet beside the one that the plan wants of all. */
export interface RuleResult {
  readonly rule: HeldFigure | "water";
  readonly quantity: QuantityId;
  readonly isHeld: boolean;
  readonly wanted: number | null;
  readonly here: number | null;
  /** Whether a figure that is held comes out as wanted; null for one that follows the kettle. */
  readonly isReached: boolean | null;
}

const QUANTITY: Readonly<Record<HeldFigure, QuantityId>> = {
  volume: "fermenter.volume",
  originalExtract: "fermenter.originalExtract",
  bitterness: "fermenter.bitterness",
  colour: "fermenter.colour",
  mashPh: "mash.ph",
};

/** What still counts as the same: less than anybody measures at home. */
const SAME_SHARE = 0.005;
const SAME_PH = 0.02;
const SAME_MG_PER_L = 2;

interface Compared {
  readonly rules: SharedBrewRules;
  /** The recipe as written, on its own kettle. */
  readonly written: Ledger;
  readonly here: Ledger;
}

/** Every figure that a plan may hold, as written and on this kettle, in the order of the process. */
export function ruleResults({ rules, written, here }: Compared): readonly RuleResult[] {
  const result = (rule: RuleResult["rule"], quantity: QuantityId, isHeld: boolean, most: number): RuleResult => {
    const [wanted, reached] = [written.quantities[quantity], here.quantities[quantity]];
    const isReached = wanted !== null && reached !== null && Math.abs(reached - wanted) <= most;
    return { rule, quantity, isHeld, wanted, here: reached, isReached: isHeld ? isReached : null };
  };
  const share = (rule: HeldFigure): RuleResult => {
    const quantity = QUANTITY[rule];
    return result(rule, quantity, rules[rule], SAME_SHARE * (written.quantities[quantity] ?? 0));
  };
  return [
    ...IONS.map((ion) => result("water", `water.${ion}`, rules.water !== "own water", SAME_MG_PER_L)),
    result("mashPh", QUANTITY.mashPh, rules.mashPh, SAME_PH),
    share("volume"),
    share("originalExtract"),
    share("bitterness"),
    share("colour"),
  ];
}
