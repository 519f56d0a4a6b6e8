import type { ReactElement } from "react";
import type { ExplainedNumber } from "@/lib/calc/explain";
import type { QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { fixedDigits } from "./fixed-digits";
import { Quantity } from "./quantity";

type Input = ExplainedNumber["inputs"][number];

/** The inputs of an explanation with their units; one that is itself computed leads on to its own explanation. */
export interface ExplanationInputsProps {
  readonly inputs: readonly Input[];
  readonly preferences: Preferences;
  readonly onFollow?: ((quantity: QuantityId) => void) | undefined;
}

export function ExplanationInputs({ inputs, preferences, onFollow }: ExplanationInputsProps): ReactElement {
  return (
    <dl>
      {inputs.map((input) => (
        <div key={input.label} className="flex items-baseline justify-between gap-4 border-b border-rule py-1">
          <dt>
            <InputLabel input={input} onFollow={onFollow} />
            {input.from === undefined ? null : <span className="text-sm text-muted"> ({input.from})</span>}
          </dt>
          <dd className="text-end">
            <InputValue input={input} preferences={preferences} />
          </dd>
        </div>
      ))}
    </dl>
  );
}

function InputLabel({
  input,
  onFollow,
}: { readonly input: Input } & Pick<ExplanationInputsProps, "onFollow">): ReactElement {
  const { quantity, label } = input;
  if (quantity === undefined || onFollow === undefined) return <>{label}</>;
  return (
    <button type="button" className="button-link text-start" onClick={() => onFollow(quantity)}>
      {label}
    </button>
  );
}

function InputValue({
  input,
  preferences,
}: {
  readonly input: Input;
  readonly preferences: Preferences;
}): ReactElement {
  if (input.dimension !== null) {
    return <Quantity value={input.value} dimension={input.dimension} preferences={preferences} />;
  }
  return (
    <>
      {plain(input.value)}
      {input.unit === "" ? null : <span className="quantity-unit">{` ${input.unit}`}</span>}
    </>
  );
}

/** A coefficient of no particular dimension: four significant digits are more than any input has. */
function plain(value: number | null): string {
  if (value === null) return "—";
  if (Number.isInteger(value)) return fixedDigits(value, 0);
  const digits = Math.min(6, Math.max(0, 3 - Math.floor(Math.log10(Math.abs(value)))));
  return fixedDigits(value, digits).replace(/0+$/, "").replace(/\.$/, "");
}
