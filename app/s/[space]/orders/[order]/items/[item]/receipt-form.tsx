"use client";

import type { FieldErrors } from "@/lib/model/field-errors";
import { entryMeasure } from "@/lib/model/order/entered";
import type { OrderItem } from "@/lib/model/order/order";
import type { Preferences } from "@/lib/model/preferences";
import { majorText } from "@/lib/model/price";
import { ActionForm } from "@/lib/ui/action-form";
import { Caution } from "@/lib/ui/caution";
import { NumberField } from "@/lib/ui/number-field";
import { entryText, entryUnit } from "@/lib/ui/order/entry";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { OrderAction } from "../../order-action";

interface ReceiptFormProps {
  readonly item: OrderItem;
  readonly currency: string;
  readonly preferences: Preferences;
  readonly action: OrderAction;
}

const SHARING = [
  { value: "proportion", text: "In proportion to what each ordered" },
  { value: "said", text: "As written below" },
] as const;

/** How much came, what it really cost, and who gets how much when it is short. */
export function ReceiptForm({ item, currency, preferences, action }: ReceiptFormProps) {
  const measure = entryMeasure(item);
  const unit = entryUnit(measure, preferences);
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
            <input type="hidden" name="measure" value={measure} />
            <input type="hidden" name="currency" value={currency} />
            <NumberField
              name="received"
              label="Received"
              unit={unit}
              hint={`Ordered: ${entryText(measure, ordered, preferences)} ${unit}.`}
              defaultValue={entryText(measure, item.received ?? ordered, preferences)}
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
            <MemberParts {...{ item, errors, preferences }} />
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
function MemberParts(props: {
  readonly item: OrderItem;
  readonly errors: FieldErrors;
  readonly preferences: Preferences;
}) {
  const { item, errors, preferences } = props;
  const measure = entryMeasure(item);
  return (
    <details>
      <summary className="target">Each member’s part, if it is to be as written</summary>
      {item.shares.map(({ userId, userName, amount, allotted }) => (
        <NumberField
          key={userId}
          name={`part.${userId}`}
          label={`Part of ${userName}`}
          unit={entryUnit(measure, preferences)}
          defaultValue={entryText(measure, allotted ?? amount, preferences)}
          error={errors[`part.${userId}`]}
        />
      ))}
    </details>
  );
}
