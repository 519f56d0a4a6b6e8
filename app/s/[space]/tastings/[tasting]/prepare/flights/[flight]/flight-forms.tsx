import type { Candidate } from "@/lib/server/tastings/candidates";
import type { PreparedFlight } from "@/lib/server/tastings/preparation";
import type { Person } from "@/lib/server/spaces/reads";
import type { DraftAt } from "../../draft-action";
import { MoveForm } from "../../../move-form";
import {
  changeFlightAction,
  enterBeerAction,
  enterBrewsAction,
  redrawOrdersAction,
  removeFlightAction,
  setPanelAction,
} from "./actions";
import { BeerForm } from "./beer-form";
import { BrewsForm } from "./brews-form";
import { ChangeFlightForm } from "./change-flight-form";
import { PanelForm } from "./panel-form";

interface FlightFormsProps {
  readonly at: DraftAt;
  readonly lockVersion: number;
  readonly flight: PreparedFlight;
  /** Everybody but the steward. */
  readonly people: readonly Person[];
  /** What can be poured and is not entered yet. */
  readonly brews: readonly Candidate[];
  /** The shared brew that the tasting follows, whose brews are chosen from the start. */
  readonly sharedBrewId: string | null;
}

/** Everything that changes a flight of a draft. After each step the forms begin anew on the version that it made. */
export function FlightForms({ at, lockVersion, flight, people, brews, sharedBrewId }: FlightFormsProps) {
  const { flightNo } = flight;
  const seen = { lockVersion, flightNo };
  return (
    <div key={lockVersion} className="no-print mt-8 flex max-w-xl flex-col gap-2">
      <details open={flight.entries.length === 0}>
        <summary className="target">Enter brews of the club</summary>
        <BrewsForm seen={seen} brews={brews} sharedBrewId={sharedBrewId} action={enterBrewsAction.bind(null, at)} />
      </details>
      <details>
        <summary className="target">Enter a beer from elsewhere</summary>
        <BeerForm seen={seen} action={enterBeerAction.bind(null, at)} />
      </details>
      <details open={flight.entries.length > 0 && flight.judges.length === 0}>
        <summary className="target">Who judges, who pours</summary>
        <PanelForm seen={seen} flight={flight} people={people} action={setPanelAction.bind(null, at)} />
      </details>
      <details>
        <summary className="target">Name and limit of the flight</summary>
        <ChangeFlightForm seen={seen} flight={flight} action={changeFlightAction.bind(null, at)} />
      </details>
      {flight.kind === "scored" ? (
        <MoveForm
          title="Draw other orders"
          button="Draw anew"
          pending="Drawing…"
          hidden={{ lockVersion }}
          action={redrawOrdersAction.bind(null, at)}
        >
          Chance decides again who tastes what in which order, in every scored flight of the tasting.
        </MoveForm>
      ) : null}
      <MoveForm
        title="Remove this flight"
        button="Remove the flight"
        pending="Removing…"
        hidden={seen}
        action={removeFlightAction.bind(null, at)}
      >
        Its entries and its panel go with it.
      </MoveForm>
    </div>
  );
}
