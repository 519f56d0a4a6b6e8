"use client";

import type { OrderItem } from "@/lib/model/order/order";
import { ActionForm } from "@/lib/ui/action-form";
import { NumberField } from "@/lib/ui/number-field";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { OrderAction } from "../../order-action";

interface SettingsFormProps {
  readonly item: OrderItem;
  readonly people: readonly { readonly userId: string; readonly name: string }[];
  readonly action: OrderAction;
}

/** Who takes what is left over, and how yeast is counted. */
export function SettingsForm({ item, people, action }: SettingsFormProps) {
  const choices = [
    { value: "", text: "The club’s stock; all pay by their amounts" },
    ...people.map(({ userId, name }) => ({ value: userId, text: name })),
  ];
  return (
    <section aria-labelledby="settings">
      <h2 id="settings" className="mb-2">
        What is left over
      </h2>
      <ActionForm key={item.lockVersion} action={action}>
        {({ errors, isPending }) => (
          <>
            <input type="hidden" name="lockVersion" value={item.lockVersion} />
            <SelectField
              name="leftOverTo"
              label="Who takes and pays for it"
              options={choices}
              defaultValue={item.leftOverTo?.userId ?? ""}
              error={errors.leftOverTo}
            />
            {item.kind === "yeast" ? (
              <NumberField
                name="cellsPerPiece"
                label="Cells in a pack"
                unit="10⁹"
                hint="Empty counts one pack a sheet."
                defaultValue={item.cellsPerPiece ?? ""}
                error={errors.cellsPerPiece}
              />
            ) : (
              <input type="hidden" name="cellsPerPiece" value="" />
            )}
            <div>
              <SubmitButton pending="Saving…" isPending={isPending} kind="quiet">
                Save
              </SubmitButton>
            </div>
          </>
        )}
      </ActionForm>
    </section>
  );
}
