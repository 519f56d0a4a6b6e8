import { QUANTITIES } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import type { Reading } from "@/lib/model/reading";
import { currentReadings } from "@/lib/model/current-readings";
import { ReadingLine } from "@/lib/ui/brew/reading-line";

/** Everything that was read, the latest first; what was corrected stays. */
export function ReadingLog({
  readings,
  preferences,
}: {
  readonly readings: readonly Reading[];
  readonly preferences: Preferences;
}) {
  const current = currentReadings(readings);
  return (
    <section aria-labelledby="readings" className="mt-8">
      <h2 id="readings">Readings</h2>
      {readings.length === 0 ? (
        <p className="mt-2 text-muted">None yet. They are entered beside the steps that say “Measure”.</p>
      ) : (
        <ul className="list-ruled mt-2">
          {[...readings].reverse().map((reading) => (
            <ReadingLine
              key={reading.id}
              reading={reading}
              counts={current.get(reading.quantity) === reading}
              dimension={QUANTITIES[reading.quantity].dimension}
              preferences={preferences}
              label={QUANTITIES[reading.quantity].label}
            />
          ))}
        </ul>
      )}
    </section>
  );
}
