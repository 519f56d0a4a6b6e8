import type { Range } from "../../errors";
import type { FunctionInput } from "./function-record";

/**
 * An input that is a field of the first argument.
 *
 * @returns The input, at "0." and the name of the field.
 */
export const fieldInput = (field: string, label: string, { unit, min, max }: Range): FunctionInput => ({
  at: `0.${field}`,
  label,
  unit,
  min,
  max,
});
