import type { ReactElement } from "react";
import { explainFunction } from "@/lib/calc/explain";
import { explainedOf } from "./explained-of";
import { FunctionDetails } from "./function-details";

/** How a figure comes about that a function of the library gives; nothing where the record refuses an argument. */
export interface ExplainedCallProps {
  /** Subject and name: "alcohol/alcoholByVolume". */
  readonly id: string;
  readonly args: readonly unknown[];
}

/** For what the server draws; a form that computes as it is filled in takes `CallExplainedWhenAsked`. */
export function ExplainedCall({ id, args }: ExplainedCallProps): ReactElement | null {
  const explained = explainedOf(explainFunction, { id, args });
  return explained === null ? null : <FunctionDetails explained={explained} />;
}
