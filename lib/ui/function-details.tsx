import type { ReactElement } from "react";
import type { ExplainedFunction } from "@/lib/calc/explain";
import { FunctionExplained } from "./function-explained";

export interface FunctionDetailsProps {
  readonly explained: ExplainedFunction;
}

/** How a computed figure comes about: words, equation, inputs, where it holds, and by whom. */
export function FunctionDetails({ explained }: FunctionDetailsProps): ReactElement {
  return (
    <details className="function-details max-w-3xl">
      <summary className="target">How it comes about</summary>
      <FunctionExplained explained={explained} />
    </details>
  );
}
