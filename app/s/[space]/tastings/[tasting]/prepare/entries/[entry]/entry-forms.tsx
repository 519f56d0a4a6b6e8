import { styleNamed } from "@/lib/model/tasting/prepare-figures";
import { STYLES } from "@/lib/model/styles";
import type { KnownEntry, Preparation } from "@/lib/server/tastings/preparation";
import { MoveForm } from "../../../move-form";
import type { DraftAt } from "../../draft-action";
import { placeEntryAction, removeEntryAction } from "./actions";
import { PlaceForm } from "./place-form";

interface EntryFormsProps {
  readonly at: DraftAt;
  readonly entry: KnownEntry;
  readonly preparation: Preparation;
  /** Codes of the styles that are proposed first. */
  readonly nearest: readonly string[];
}

/** As what an entry is judged and where; or that it is not. */
export function EntryForms({ at, entry, preparation, nearest }: EntryFormsProps) {
  const { lockVersion, flights } = preparation;
  const { entryNo, flightNo, styleCode } = entry;
  return (
    <div key={lockVersion} className="no-print mt-6 max-w-xl">
      <PlaceForm
        seen={{ lockVersion, entryNo }}
        flights={flights.map((each) => ({ value: String(each.flightNo), text: each.title }))}
        flightNo={flightNo}
        styles={styleOptions(nearest)}
        styleCode={styleCode ?? ""}
        action={placeEntryAction.bind(null, at)}
      />
      <MoveForm
        title="Take this entry out"
        button="Take it out"
        pending="Taking out…"
        hidden={{ lockVersion, entryNo }}
        action={removeEntryAction.bind(null, at, flightNo)}
      >
        Take its label off the bottle: chance may give the code to another beer.
      </MoveForm>
    </div>
  );
}

/** The nearest first, then all in the order of the list. */
function styleOptions(nearest: readonly string[]): readonly { readonly value: string; readonly text: string }[] {
  const rest = STYLES.filter(({ code }) => !nearest.includes(code));
  const first = nearest.flatMap((code) => styleNamed(code) ?? []);
  return [
    { value: "", text: "No style yet" },
    ...[...first, ...rest].map(({ code, name }) => ({ value: code, text: `${code} ${name}` })),
  ];
}
