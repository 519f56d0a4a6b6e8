"use client";

import type { FieldErrors } from "@/lib/model/field-errors";
import { entryUnit } from "@/lib/model/order/entered";
import type { OrderItem } from "@/lib/model/order/order";
import { majorText } from "@/lib/model/price";
import { ActionForm } from "@/lib/ui/action-form";
import { Caution } from "@/lib/ui/caution";
import { NumberField } from "@/lib/ui/number-field";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { OrderAction } from "../../order-action";
import { typedText } from "../../typed-text";

interface ReceiptFormProps {
  readonly item: OrderItem;
  readonly currency: string;
  readonly action: OrderAction;
}

const SHARING = [
  { value: "proportion", text: "In proportion to what each ordered" },
  { value: "said", text: "As written below" },
] as const;

/** How much came, what it really cost, and who gets how much when it is short. */
export function ReceiptForm({ item, currency, action }: ReceiptFormProps) {
  const { unit, factor } = entryUnit(item);
  const ordered = item.purchase?.amount ?? 0;
  return (
    <section aria-labelledby="receipt" className="no-print mt-10 max-w-xl">
      <h2 id="receipt" className="mb-2">
        {item.received === null ? "What came" : "What came, noted already"}
      </h2>
      <Caution>
        A sack weighs 25 kg or more: lift it with straight back and bent knees, or two at a time; open it outdoors or
        with a mask, grain dust harms the lungs.
      </Caution>
      <ActionForm key={item.lockVersion} action={action}>
        {({ errors, isPending }) => (
          <>
            <input type="hidden" name="lockVersion" value={item.lockVersion} />
            <input type="hidden" name="factor" value={factor} />
            <input type="hidden" name="currency" value={currency} />
            <NumberField
              name="received"
              label="Received"
              unit={unit}
              hint={`Ordered: ${typedText(ordered, factor)} ${unit}.`}
              defaultValue={typedText(item.received ?? ordered, factor)}
              error={errors.received}
            />
            <NumberField
              name="paid"
              label="Paid"
              unit={currency}
              hint="What was charged for it; empty is the price of the packs."
              defaultValue={item.paid === null ? "" : majorText(item.paid, currency)}
              error={errors.paid}
            />
            <SelectField name="sharing" label="A short delivery is shared" options={SHARING} error={errors.sharing} />
            <MemberParts item={item} errors={errors} />
            <div>
              <SubmitButton pending="Saving…" isPending={isPending}>
                Note what came
              </SubmitButton>
            </div>
          </>
        )}
      </ActionForm>
    </section>
  );
}

/** Who gets how much, where it is not to be in proportion. */
function MemberParts({ item, errors }: { readonly item: OrderItem; readonly errors: FieldErrors }) {
  const { unit, factor } = entryUnit(item);
  return (
    <details>
      <summary className="target">Each member’s part, if it is to be as written</summary>
      {item.shares.map(({ userId, userName, amount, allotted }) => (
        <NumberField
          key={userId}
          name={`part.${userId}`}
          label={`Part of ${userName}`}
          unit={unit}
          defaultValue={typedText(allotted ?? amount, factor)}
          error={errors[`part.${userId}`]}
        />
      ))}
    </details>
  );
}
