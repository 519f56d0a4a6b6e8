import { ClockTime } from "@/lib/ui/brew/clock-time";
import { Quantity } from "@/lib/ui/quantity";
import type { CellarPart } from "./cellar-part";
import { PitchForm } from "./pitch-form";

/** What was pitched, and the form for it. */
export function PitchSection({ brew, preferences, record }: CellarPart) {
  const { pitches } = brew.log;
  const asked = brew.predicted["fermenter.cells"] ?? null;
  return (
    <section aria-labelledby="pitch">
      <h2 id="pitch">Pitch</h2>
      {asked === null ? null : (
        <p className="my-2">
          The recipe asks for{" "}
          <Quantity value={asked.value} dimension="cells" preferences={preferences} interval={asked} /> living cells.
        </p>
      )}
      {pitches.length === 0 ? <p className="text-muted">Not logged yet.</p> : null}
      <ul className="list-ruled">
        {pitches.map(({ id, at, actorName, content }) => (
          <li key={id} className="py-2">
            <strong>{content.yeast}</strong>,{" "}
            <Quantity value={content.cells} dimension="cells" preferences={preferences} reason="cells not counted" /> at{" "}
            <Quantity value={content.celsius} dimension="temperature" preferences={preferences} />
            {content.starterL === 0 ? (
              ", without a starter"
            ) : (
              <>
                , from a starter of <Quantity value={content.starterL} dimension="volume" preferences={preferences} />
              </>
            )}
            <span className="text-sm text-muted">
              {" "}
              {actorName}, <ClockTime at={new Date(at)} withDay />
              {content.note === "" ? null : `. “${content.note}”`}
            </span>
          </li>
        ))}
      </ul>
      {brew.mayWrite ? (
        <PitchForm
          brewId={brew.id}
          yeast={brew.recipe.yeast}
          isOpen={pitches.length === 0}
          preferences={preferences}
          record={record}
        />
      ) : null}
    </section>
  );
}
