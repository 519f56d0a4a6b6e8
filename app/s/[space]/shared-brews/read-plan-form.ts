import { z } from "zod";
import { HELD_FIGURES } from "@/lib/model/shared-brew-rules";

/** The fields of a plan as a form sends them: a box that is not ticked is not sent at all. */
export const planFields = {
  "window.from": z.string(),
  "window.to": z.string(),
  "rules.yeast.lot": z.string(),
  "rules.water": z.string(),
  "rules.words": z.string(),
  ...box("rules.yeast.same"),
  ...box("rules.volume"),
  ...box("rules.originalExtract"),
  ...box("rules.bitterness"),
  ...box("rules.colour"),
  ...box("rules.mashPh"),
};

type PlanFields = z.output<z.ZodObject<typeof planFields>>;

/** The same as the model takes it, which looks at the words. */
export function windowAndRules(fields: PlanFields): { readonly window: unknown; readonly rules: unknown } {
  const [from, to] = [fields["window.from"].trim(), fields["window.to"].trim()];
  return {
    window: from === "" && to === "" ? null : { from, to: to === "" ? from : to },
    rules: {
      ...Object.fromEntries(HELD_FIGURES.map((figure) => [figure, fields[`rules.${figure}`] === "on"])),
      water: fields["rules.water"],
      yeast: { same: fields["rules.yeast.same"] === "on", lot: fields["rules.yeast.lot"] },
      words: fields["rules.words"],
    },
  };
}

function box<const N extends string>(name: N): Record<N, z.ZodOptional<z.ZodLiteral<"on">>> {
  return { [name]: z.literal("on").optional() } as Record<N, z.ZodOptional<z.ZodLiteral<"on">>>; // one key, as named
}
