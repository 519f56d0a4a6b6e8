import type { ReactElement } from "react";
import { explainFunction } from "@/lib/calc/explain";
import { OutOfRangeError } from "@/lib/calc/errors";
import { FunctionDetails } from "./function-details";

/** How a figure comes about that a function of the library gives; nothing where the record refuses an argument. */
export interface ExplainedCallProps {
  /** Subject and name: "alcohol/alcoholByVolume". */
  readonly id: string;
  readonly args: readonly unknown[];
}

export function ExplainedCall({ id, args }: ExplainedCallProps): ReactElement | null {
  const explanation = explanationOf(id, args);
  return explanation?.ok === true ? <FunctionDetails explained={explanation.explained} /> : null;
}

function explanationOf(id: string, args: readonly unknown[]): ReturnType<typeof explainFunction> | null {
  try {
    return explainFunction({ id, args });
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}
