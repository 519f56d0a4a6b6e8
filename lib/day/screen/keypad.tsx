import type { ReactElement } from "react";

const KEYS = ["7", "8", "9", "⌫", "4", "5", "6", ".", "1", "2", "3", "±", "0"] as const;
export type Key = (typeof KEYS)[number];

const SPOKEN: Readonly<Partial<Record<Key, string>>> = {
  ".": "Decimal point",
  "⌫": "Delete the last digit",
  "±": "Change the sign",
};

/** What a key makes of a number. `startsAnew` where the number stands there as a suggestion. */
export function pressed(text: string, key: Key, startsAnew: boolean): string {
  if (key === "⌫") return text.slice(0, -1);
  if (key === "±") return text.startsWith("-") ? text.slice(1) : `-${text}`;
  if (startsAnew) return key === "." ? "0." : key;
  if (key === "." && /[.,]/.test(text)) return text;
  return text + key;
}

/** Keys that a wet thumb hits. They write into the field that was touched last; a keyboard writes there itself. */
export function Keypad({
  onPress,
  of,
  mayBeNegative,
}: {
  readonly onPress: (key: Key) => void;
  readonly of: string;
  readonly mayBeNegative: boolean;
}): ReactElement {
  return (
    <div role="group" aria-label={`Keypad for ${of}`} className="keypad">
      {KEYS.filter((key) => key !== "±" || mayBeNegative).map((key) => (
        <button
          key={key}
          type="button"
          className={key === "0" ? "button button-quiet keypad-key keypad-zero" : "button button-quiet keypad-key"}
          aria-label={SPOKEN[key]}
          onClick={() => onPress(key)}
        >
          {key}
        </button>
      ))}
    </div>
  );
}
