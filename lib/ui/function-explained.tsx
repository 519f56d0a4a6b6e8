import type { ReactElement } from "react";
import type { ExplainedFunction } from "@/lib/calc/explain";

/** The words, equation, inputs, range and source of a computed figure. */
export function FunctionExplained({ explained }: { readonly explained: ExplainedFunction }): ReactElement {
  const { words, equation, inputs, sources, validRange } = explained;
  return (
    <div className="flex flex-col gap-3">
      <p>{words}</p>
      <p className="font-serif text-lg break-words">{equation}</p>
      <dl>
        {inputs.map(({ label, unit, value, min, max }) => (
          <div key={label} className="flex flex-wrap items-baseline justify-between gap-x-4 border-b border-rule py-1">
            <dt>{label}</dt>
            <dd>
              {`${String(Number(value.toPrecision(4)))} ${unit}`.trim()}{" "}
              <span className="text-sm text-muted">{`(${String(min)} to ${String(max)})`}</span>
            </dd>
          </div>
        ))}
      </dl>
      <p>Holds for: {validRange}</p>
      <p>Source: {sources.map(({ title }) => title).join("; ")}</p>
    </div>
  );
}
