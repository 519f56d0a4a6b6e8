export type { ExplainedNumber, Explanation, ExplanationInput, WhatIf } from "./explanation";
export { explain } from "./explain";
export { explainFermentable } from "./explain-fermentable";
export { explainHop } from "./explain-hop";
export { limitWords, type LimitWords } from "./limit-words";
export type { SourceReference } from "./source-titles";
export {
  explainFunction,
  FUNCTION_RECORDS,
  type ExplainedFunction,
  type FunctionExplanation,
  type Sensitivity,
} from "./functions/explain-function";
export type { FunctionInput, FunctionRecord } from "./functions/function-record";
