import type { Tasting } from "@/lib/model/tasting/tasting";
import { MoveForm } from "../move-form";
import { addFlightAction, changeTastingAction, discardTastingAction, openTastingAction } from "./actions";
import { ChangeTastingForm } from "./change-tasting-form";
import type { DraftAt } from "./draft-action";
import { NewFlightForm } from "./new-flight-form";

interface DraftFormsProps {
  readonly at: DraftAt;
  readonly tasting: Tasting;
  readonly lockVersion: number;
}

/** Everything that changes a draft as a whole. After each step the forms begin anew on the version that it made. */
export function DraftForms({ at: { space, id }, tasting, lockVersion }: DraftFormsProps) {
  const seen = { lockVersion };
  return (
    <div key={lockVersion} className="no-print">
      <section aria-labelledby="new-flight" className="mt-8 max-w-xl">
        <h2 id="new-flight" className="mb-2">
          Another flight
        </h2>
        <NewFlightForm {...seen} action={addFlightAction.bind(null, space, id)} />
      </section>
      <details className="mt-6 max-w-xl">
        <summary className="target">Title, day and note</summary>
        <ChangeTastingForm tasting={tasting} {...seen} action={changeTastingAction.bind(null, space, id)} />
      </details>
      <MoveForm
        title="Open the tasting"
        button="Open for judging"
        pending="Opening…"
        hidden={seen}
        action={openTastingAction.bind(null, space, id)}
      >
        From then on entries, panel and orders stay as they are; judges and pourers are told. Print labels before you
        pour.
      </MoveForm>
      <MoveForm
        title="Throw this tasting away"
        button="Throw it away for good"
        pending="Throwing away…"
        hidden={seen}
        action={discardTastingAction.bind(null, space, id)}
      >
        Its flights, entries and panel go with it. Nothing was judged yet.
      </MoveForm>
    </div>
  );
}
