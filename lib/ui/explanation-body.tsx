import type { ReactElement, ReactNode } from "react";
import type { ExplainedNumber } from "@/lib/calc/explain";
import type { Interval, QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { ExplanationInputs } from "./explanation-inputs";
import { Quantity } from "./quantity";

/** What an explanation says: in words, as an equation, from which inputs, by which source, and what would change it. */
export interface ExplanationBodyProps {
  readonly explanation: ExplainedNumber;
  /** The 80 % interval of the number itself, where it is predicted. */
  readonly interval?: Interval | null | undefined;
  readonly preferences: Preferences;
  readonly onFollow?: ((quantity: QuantityId) => void) | undefined;
}

export function ExplanationBody({ explanation, interval, preferences, onFollow }: ExplanationBodyProps): ReactElement {
  const { dimension } = explanation;
  return (
    <div className="flex flex-col gap-5">
      <div>
        <p className="mb-2 text-2xl">
          <Quantity
            value={explanation.value}
            dimension={dimension}
            interval={interval}
            preferences={preferences}
            reason="This brew has no such value."
          />
        </p>
        <p>{explanation.words}</p>
      </div>
      <Part heading="Equation">
        <p className="font-serif text-lg break-words">{explanation.equation}</p>
      </Part>
      <Part heading="Inputs">
        <ExplanationInputs inputs={explanation.inputs} preferences={preferences} onFollow={onFollow} />
      </Part>
      {explanation.whatIf.length === 0 ? null : (
        <Part heading="If one thing changed">
          <ul>
            {explanation.whatIf.map((line) => (
              <li key={line.change} className="flex justify-between gap-4 border-b border-rule py-1">
                <span>{line.change}</span>
                <Quantity value={line.value} dimension={dimension} preferences={preferences} reason="no such value" />
              </li>
            ))}
          </ul>
        </Part>
      )}
      <Part heading="Holds for">
        <p>{explanation.validRange}</p>
      </Part>
      <Part heading={explanation.sources.length === 1 ? "Source" : "Sources"}>
        <ul>
          {explanation.sources.map(({ anchor, title }) => (
            <li key={anchor}>{title}</li>
          ))}
        </ul>
      </Part>
    </div>
  );
}

function Part({ heading, children }: { readonly heading: string; readonly children: ReactNode }): ReactElement {
  return (
    <section>
      <h3 className="mb-1">{heading}</h3>
      {children}
    </section>
  );
}
