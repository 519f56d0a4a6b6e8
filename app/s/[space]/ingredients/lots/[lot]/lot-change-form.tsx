"use client";

import { ON_HAND_FIELDS } from "@/lib/model/ingredient-fields";
import type { IngredientLot } from "@/lib/model/ingredient-lot";
import type { Preferences } from "@/lib/model/preferences";
import { majorText } from "@/lib/model/price";
import { fieldText } from "@/lib/ui/read-field";
import { KeepForm, type KeepAction } from "../../keep-form";
import { LotFields } from "../lot-fields";

interface LotChangeFormProps {
  readonly lot: IngredientLot;
  readonly names: readonly string[];
  readonly preferences: Preferences;
  readonly action: KeepAction;
}

const WORDS = { button: "Keep the changes", pending: "Keeping…" } as const;

/** Changes what a lot is; how much there is of it changes by movements. */
export function LotChangeForm({ lot, names, preferences, action }: LotChangeFormProps) {
  const values = valuesOf(lot, preferences);
  return (
    <KeepForm what="lot" record={lot} words={WORDS} action={action}>
      {(errors) => <LotFields kind={lot.what.kind} {...{ values, names, errors, preferences }} />}
    </KeepForm>
  );
}

function valuesOf({ name, label, notes, bestBefore, price, what }: IngredientLot, preferences: Preferences) {
  const asTyped =
    price === null
      ? {}
      : {
          price: majorText(price.minor, price.currency),
          currency: price.currency,
          priceFor: fieldText(ON_HAND_FIELDS[what.kind], price.for, preferences),
        };
  return { name, label, notes, bestBefore, ...asTyped, ...what.figures };
}
