import type { Dimension } from "@/lib/calc/ledger";
import { SERIES, isSeries } from "@/lib/model/log/series";
import { ClockTime } from "@/lib/ui/brew/clock-time";
import { Quantity } from "@/lib/ui/quantity";
import { ChangeReading } from "./change-reading";
import type { LoggedLineProps } from "./logged-line-props";

/** One reading: what counts, who read it, and everything that it was before. */
export function LoggedLine({ reading, label, ...part }: LoggedLineProps) {
  const { measured, isVoid, voidedWhy, contested, history, at, actorName } = reading;
  const dimension: Dimension = isSeries(measured.quantity) ? SERIES[measured.quantity].dimension : "extract";
  const value = <Quantity value={measured.value} dimension={dimension} preferences={part.preferences} />;
  return (
    <li className={isVoid ? "py-2 text-muted" : "py-2"}>
      {label} {isVoid ? <s>{value}</s> : <strong>{value}</strong>}{" "}
      <span className="text-sm text-muted">
        {actorName}, <ClockTime at={new Date(at)} withDay />, {measured.instrument}
        {measured.sampleC === null && history.length === 1 ? null : `, read as “${measured.entered}”`}
        {measured.note === "" ? null : `. “${measured.note}”`}
        {isVoid ? `. Does not count${voidedWhy === "" ? "" : `: “${voidedWhy}”`}` : null}
        {contested ? ". Two people corrected it at once: correct it once more to say what counts" : null}
      </span>
      {history.length < 2 ? null : <History reading={reading} dimension={dimension} preferences={part.preferences} />}
      {part.brew.mayWrite ? <ChangeReading reading={reading} label={label} {...part} /> : null}
    </li>
  );
}

function History({
  reading: { history },
  dimension,
  preferences,
}: Pick<LoggedLineProps, "reading" | "preferences"> & { readonly dimension: Dimension }) {
  return (
    <ol className="ml-5 list-decimal text-sm text-muted">
      {history.map(({ id, measured, why, at, actorName }, i) => (
        <li key={id}>
          {measured === null ? (
            `Said not to count${why === "" ? "" : `: “${why}”`}`
          ) : (
            <>
              {i === 0 ? "First" : "Corrected to"}{" "}
              <Quantity value={measured.value} dimension={dimension} preferences={preferences} />
            </>
          )}
          , {actorName}, <ClockTime at={new Date(at)} withDay />
        </li>
      ))}
    </ol>
  );
}
