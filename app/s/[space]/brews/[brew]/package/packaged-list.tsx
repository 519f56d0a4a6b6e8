import type { Logged } from "@/lib/model/log/project-log";
import type { Packaged } from "@/lib/model/log/log-event";
import type { Preferences } from "@/lib/model/preferences";
import { containerWords } from "@/lib/model/cellar/containers";
import { filledLitres } from "@/lib/model/cellar/packaging-plan";
import { pressureOf } from "@/lib/model/cellar/package-pressure";
import { ClockTime } from "@/lib/ui/brew/clock-time";
import { Quantity } from "@/lib/ui/quantity";

interface PackagedListProps {
  readonly packagings: readonly Logged<Packaged>[];
  readonly preferences: Preferences;
}

/** What is in containers already, and who signed for what was over a rating or too early. */
export function PackagedList({ packagings, preferences }: PackagedListProps) {
  if (packagings.length === 0) return null;
  return (
    <section aria-labelledby="packaged" className="mb-6">
      <h2 id="packaged">In package</h2>
      <ul className="list-ruled mt-2">
        {packagings.map(({ id, at, actorName, content }) => (
          <li key={id} className="py-2">
            <p>
              {containerWords(content)}:{" "}
              <strong>
                <Quantity value={filledLitres(content.containers)} dimension="volume" preferences={preferences} />
              </strong>{" "}
              at <Quantity value={content.volumesCo2} dimension="carbonation" preferences={preferences} />,{" "}
              {content.method === "forced" ? "carbonated from a cylinder" : "primed with "}
              {content.method === "forced" ? null : (
                <Quantity value={content.sugarGrams} dimension="grams" preferences={preferences} digits={0} />
              )}
              ; <Quantity value={pressureOf(content)} dimension="pressure" preferences={preferences} /> at{" "}
              <Quantity value={content.storageC} dimension="temperature" preferences={preferences} digits={0} />.
            </p>
            {content.override === null ? null : (
              <p className="quantity-attention">
                Over the stated pressure, signed “{content.override.name}”: “{content.override.why}”
              </p>
            )}
            {content.early === null ? null : (
              <p className="quantity-attention">Before the gravity stood still: “{content.early.why}”</p>
            )}
            <p className="text-sm text-muted">
              {actorName}, <ClockTime at={new Date(at)} withDay />
              {content.note === "" ? null : `. “${content.note}”`}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
