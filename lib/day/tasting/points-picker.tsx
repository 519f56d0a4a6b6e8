import type { ReactElement } from "react";

interface PointsPickerProps {
  readonly name: string;
  readonly label: string;
  readonly most: number;
  readonly value: number | null;
  readonly onChange: (points: number) => void;
}

/** Points for one part: a whole number under the thumb, and a half beside it. */
export function PointsPicker({ name, label, most, value, onChange }: PointsPickerProps): ReactElement {
  const whole = value === null ? null : Math.floor(value);
  const hasHalf = value !== null && value !== whole;
  return (
    <fieldset>
      <legend className="sr-only">
        Points for {label}, 0 to {most}
      </legend>
      <div className="points">
        {Array.from({ length: most + 1 }, (_, points) => (
          <label key={points} className="points-key">
            <input
              type="radio"
              className="sr-only"
              name={name}
              value={points}
              checked={whole === points}
              onChange={() => onChange(points)}
            />
            <span>{points}</span>
          </label>
        ))}
        <label className="points-key">
          <input
            type="checkbox"
            className="sr-only"
            aria-label={`And a half point for ${label}`}
            checked={hasHalf}
            disabled={whole === null || whole === most}
            onChange={() => onChange((whole ?? 0) + (hasHalf ? 0 : 0.5))}
          />
          <span>+½</span>
        </label>
      </div>
    </fieldset>
  );
}
