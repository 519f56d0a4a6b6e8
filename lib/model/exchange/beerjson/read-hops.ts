import type { HopAddition } from "@/lib/calc/ledger";
import { minutes } from "@/lib/calc/units";
import { HOP_FIELDS } from "../../recipe-fields";
import type { FieldCursor } from "../field-cursor";
import { HOP_NAME } from "../stated-fields";
import { takeMeasure } from "./measure";
import { PERCENT, SMALL_MASS, TIME, VOLUME } from "./units";

/** `standStep` is the step of the boil that is the hop stand, counted from 1. */
export function readHops(additions: FieldCursor, standStep: number | null): readonly HopAddition[] {
  return additions.items.flatMap((row) => {
    const read = row.node === null ? null : row.log.whole(row.node, () => readHop(row, standStep));
    return read === null ? [] : [read];
  });
}

function readHop(row: FieldCursor, standStep: number | null): HopAddition | null {
  const name = row.at("name").takeText(HOP_NAME);
  if (Object.hasOwn(VOLUME, row.at("amount", "unit").text ?? "")) {
    return row.at("amount").refuse("a volume of hop extract: this book weighs hops");
  }
  const grams = takeMeasure(row.at("amount"), HOP_FIELDS.grams, SMALL_MASS);
  const alpha = takeMeasure(row.at("alpha_acid"), HOP_FIELDS.alpha, PERCENT);
  const use = readUse(row, standStep);
  if (name === null || grams === null || alpha === null || use === null) {
    if (row.at("amount").node === null) row.refuse("it has no amount");
    if (row.at("alpha_acid").node === null) row.refuse("it has no alpha acids");
    return null;
  }
  const time = readTime(row, use);
  return time === null ? null : { name, grams, alpha, use, minutes: time };
}

const NO_PLACE: Readonly<Record<string, string>> = {
  add_to_mash: "hops in the mash have no place in this book",
  add_to_package: "hops in the package have no place in this book",
};

function readUse(row: FieldCursor, standStep: number | null): HopAddition["use"] | null {
  const use = row.at("timing", "use");
  const { text } = use;
  if (text === "add_to_fermentation") {
    use.take("a dry hop");
    return "dry";
  }
  if (text !== "add_to_boil") {
    return (use.node === null ? row : use).refuse(NO_PLACE[text ?? ""] ?? "it does not say where the hops go in");
  }
  const step = row.at("timing", "step");
  if (standStep !== null && step.text === String(standStep)) {
    use.take("in the hop stand");
    step.take("the hop stand");
    return "stand";
  }
  use.take();
  return "boil";
}

/** Time counts back from the end in the boil and its stand, and forward from the start of a step elsewhere. */
function readTime(row: FieldCursor, use: HopAddition["use"]): HopAddition["minutes"] | null {
  const time = row.at("timing", "time");
  if (use === "dry") {
    time.keep("bitterness does not depend on when a dry hop goes in");
    return minutes(0);
  }
  if (time.node === null) return row.refuse("it does not say when the hops go in");
  return takeMeasure(time, HOP_FIELDS.minutes, TIME);
}
