/** The span of values a formula or a quantity accepts, with its unit. */
export interface Range {
  readonly unit: string;
  readonly min: number;
  readonly max: number;
}

/**
 * A value outside the range in which a quantity is possible or a formula holds.
 *
 * @example
 * new OutOfRangeError("extract", 20.1, { unit: "°P", min: 0, max: 20 }).message; // "extract 20.1 °P is outside 0 to 20 °P"
 */
export class OutOfRangeError extends RangeError {
  override readonly name = "OutOfRangeError";

  constructor(
    readonly quantity: string,
    readonly value: number,
    readonly range: Range,
  ) {
    const unit = range.unit === "" ? "" : ` ${range.unit}`;
    super(`${quantity} ${String(value)}${unit} is outside ${String(range.min)} to ${String(range.max)}${unit}`);
  }
}

/**
 * Passes a value through when it lies in its range.
 *
 * @param quantity - What the value is, as a reader of the message would call it.
 * @returns The value unchanged.
 * @throws {@link OutOfRangeError} when the value is outside the range or not a number.
 * @example
 * requireInRange("extract", 12, { unit: "°P", min: 0, max: 35 }); // 12
 */
export function requireInRange<N extends number>(quantity: string, value: N, range: Range): N {
  // Written this way round so that NaN fails too.
  if (!(value >= range.min && value <= range.max)) throw new OutOfRangeError(quantity, value, range);
  return value;
}
