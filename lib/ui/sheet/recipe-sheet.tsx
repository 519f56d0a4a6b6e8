import type { ReactElement } from "react";
import { brew, intervals, type Ambient, type Equipment, type Recipe } from "@/lib/calc/ledger";
import { buildRunSheet, CAUTIONS } from "@/lib/calc/runsheet";
import type { Preferences } from "@/lib/model/preferences";
import { FigureList } from "./figure-list";
import { HandWriting } from "./hand-writing";
import { MashAndYeast } from "./mash-and-yeast";
import { PrintedTime } from "./printed-time";
import { sheetRows } from "./sheet-rows";
import { SheetTable } from "./sheet-table";
import { Timetable } from "./timetable";

/**
 * A recipe on one kettle as it goes on paper, one or two pages.
 *
 * - `kettle` in words, with whose it is; `about` what else belongs beside the revision, such as a way out.
 */
export interface RecipeSheetProps {
  readonly rev: number;
  readonly kettle: string;
  readonly about?: string | undefined;
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly notes: string;
  readonly preferences: Preferences;
}

export function RecipeSheet(props: RecipeSheetProps & { readonly printedAt: Date }): ReactElement | null {
  const { rev, kettle, about, recipe, equipment, ambient, notes, preferences, printedAt } = props;
  const outcome = brew({ recipe, equipment, ambient });
  if (!outcome.ok) return null;
  const { ledger } = outcome;
  const steps = buildRunSheet({ ledger, recipe, equipment });
  const cautions = [...new Set(steps.flatMap((step) => step.cautions))];
  return (
    <div className="recipe-sheet">
      <p>
        Revision {rev}, on {kettle}
        {about === undefined ? "" : `, ${about}`}. <PrintedTime at={printedAt} />
      </p>
      <FigureList {...{ ledger, preferences }} intervals={intervals({ recipe, equipment, ambient })} />
      <div className="sheet-columns">
        <SheetTable rows={sheetRows(recipe, ledger)} preferences={preferences} />
        <MashAndYeast recipe={recipe} preferences={preferences} />
      </div>
      <Timetable steps={steps} equipment={equipment} preferences={preferences} />
      {notes === "" ? null : (
        <section>
          <h2>Notes of the recipe</h2>
          <p className="whitespace-pre-wrap">{notes}</p>
        </section>
      )}
      <section>
        <h2>Cautions</h2>
        <ul>
          {cautions.map((id) => (
            <li key={id}>{CAUTIONS[id]}</li>
          ))}
        </ul>
      </section>
      <HandWriting />
    </div>
  );
}
