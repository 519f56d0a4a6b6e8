"use client";

import type { ActionResult } from "@/lib/model/action-result";
import type { KeepOutcome } from "@/lib/model/ingredient";
import { ON_HAND_FIELDS } from "@/lib/model/ingredient-fields";
import type { IngredientLot } from "@/lib/model/ingredient-lot";
import type { Preferences } from "@/lib/model/preferences";
import { majorText } from "@/lib/model/price";
import { ActionForm } from "@/lib/ui/action-form";
import { fieldText } from "@/lib/ui/read-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { KeepAnswer } from "../../keep-answer";
import { LotFields } from "../lot-fields";

interface LotChangeFormProps {
  readonly lot: IngredientLot;
  readonly names: readonly string[];
  readonly preferences: Preferences;
  readonly action: (previous: ActionResult<KeepOutcome> | null, form: FormData) => Promise<ActionResult<KeepOutcome>>;
}

/** Changes what a lot is; how much there is of it changes by movements. */
export function LotChangeForm({ lot, names, preferences, action }: LotChangeFormProps) {
  const { id, lockVersion, what } = lot;
  return (
    <ActionForm action={action}>
      {({ result, errors, isPending }) => (
        <>
          <input type="hidden" name="id" value={id} />
          <input type="hidden" name="lockVersion" value={lockVersion} />
          <LotFields kind={what.kind} values={valuesOf(lot, preferences)} {...{ names, errors, preferences }} />
          <KeepAnswer result={result} what="lot" />
          <div>
            <SubmitButton pending="Keeping…" isPending={isPending}>
              Keep the changes
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
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
