import type { Equipment } from "@/lib/calc/ledger";
import type { Step, StepName } from "@/lib/calc/runsheet";

const TITLES: Readonly<Record<StepName, string>> = {
  prepare: "Prepare",
  "weigh out": "Weigh out",
  fill: "Fill with water",
  "heat strike water": "Heat the strike water",
  "dough in": "Dough in",
  rest: "Rest",
  "heat between rests": "Heat to the next rest",
  "lift and drain": "Lift and drain",
  sparge: "Sparge",
  "heat to the boil": "Heat to the boil",
  "hot-break watch": "Watch the hot break",
  boil: "Boil",
  "hop addition": "Add hops",
  "cool to the stand": "Cool to the stand temperature",
  stand: "Hop stand",
  chill: "Chill",
  transfer: "Run into the fermenter",
  pitch: "Pitch the yeast",
  clean: "Clean",
  extra: "Extra step",
};

/** What to do in a step; grain in a tun is drained where it is. */
export function stepTitle({ name }: Step, { mash }: Equipment): string {
  return name === "lift and drain" && mash.kind === "tun" ? "Drain the mash" : TITLES[name];
}
