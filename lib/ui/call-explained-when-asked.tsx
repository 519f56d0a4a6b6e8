"use client";

import { useState, type ReactElement } from "react";
import type { explainFunction } from "@/lib/calc/explain";
import type { ExplainedCallProps } from "./explained-call";
import { explainedOf } from "./explained-of";
import { FunctionExplained } from "./function-explained";

/** The same as `ExplainedCall` in a form: the explanations of the library are fetched once somebody opens one. */
export function CallExplainedWhenAsked({ id, args }: ExplainedCallProps): ReactElement {
  const [explain, setExplain] = useState<typeof explainFunction | null>(null);
  const fetchIt = (): void => {
    if (explain !== null) return;
    void import("@/lib/calc/explain").then((library) => setExplain(() => library.explainFunction));
  };
  const explained = explain === null ? null : explainedOf(explain, { id, args });
  return (
    <details className="max-w-3xl" onToggle={fetchIt}>
      <summary className="target">How it comes about</summary>
      {explained === null ? null : <FunctionExplained explained={explained} />}
      {explain !== null && explained === null ? <p>The formula does not hold for these values.</p> : null}
    </details>
  );
}
