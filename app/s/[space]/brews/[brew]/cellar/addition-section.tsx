import { ClockTime } from "@/lib/ui/brew/clock-time";
import type { CellarPart } from "./cellar-part";
import { AdditionForm } from "./addition-form";

/** What went into the fermenter since pitching, and the form for it. */
export function AdditionSection({ brew, record }: Pick<CellarPart, "brew" | "record">) {
  const added = brew.log.additions.filter(({ content }) => content.at === "fermenter");
  const dryHops = brew.recipe.hops
    .filter(({ use }) => use === "dry")
    .map(({ name, grams }) => ({ name, grams: weighed(grams) }));
  return (
    <section aria-labelledby="additions">
      <h2 id="additions">Added in the fermenter</h2>
      {added.length === 0 ? <p className="mt-2 text-muted">Nothing yet.</p> : null}
      <ul className="list-ruled">
        {added.map(({ id, at, actorName, content }) => (
          <li key={id} className="py-2">
            <strong>{content.name}</strong>, {String(content.amount)} {content.unit}{" "}
            <span className="text-sm text-muted">
              {actorName}, <ClockTime at={new Date(at)} withDay />
              {content.note === "" ? null : `. “${content.note}”`}
            </span>
          </li>
        ))}
      </ul>
      {brew.mayWrite ? (
        <AdditionForm
          brewId={brew.id}
          dryHops={dryHops.filter(({ name }) => !added.some(({ content }) => content.name === name))}
          record={record}
        />
      ) : null}
    </section>
  );
}

/** As a kitchen scale shows it. */
function weighed(grams: number): number {
  return Number(grams.toPrecision(3));
}
