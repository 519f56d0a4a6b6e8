import type { Metadata } from "next";
import { Notice } from "@/lib/ui/notice";
import { readPreparation, readTasting } from "../read-tasting";
import { MoveForm } from "../move-form";
import { TastingHeading } from "../tasting-heading";
import { addFlightAction, changeTastingAction, discardTastingAction, openTastingAction } from "./actions";
import { ChangeTastingForm } from "./change-tasting-form";
import { NewFlightForm } from "./new-flight-form";
import { PreparedFlights } from "./prepared-flights";

interface PreparePageProps {
  readonly params: Promise<{ readonly space: string; readonly tasting: string }>;
}

export async function generateMetadata({ params }: PreparePageProps): Promise<Metadata> {
  const { space, tasting } = await params;
  await readPreparation(space, tasting);
  return { title: `Preparation: ${(await readTasting(space, tasting)).tasting.title}` };
}

export default async function PreparePage({ params }: PreparePageProps) {
  const { space, tasting: id } = await params;
  const { tasting, preparation } = await readPreparation(space, id);
  const { lockVersion, flights } = preparation;
  const home = `/s/${space}`;
  const isDraft = tasting.state === "draft";
  return (
    <>
      <TastingHeading home={home} tasting={tasting} isSteward page="prepare" />
      <div className="mt-4">
        <Notice>
          Only you see this page. What stands here tells which beer is which: leave it open on no screen that a judge
          can read.
        </Notice>
      </div>
      <PreparedFlights home={`${home}/tastings/${id}/prepare`} flights={flights} />
      {isDraft ? (
        <>
          <section aria-labelledby="new-flight" className="mt-8 max-w-xl">
            <h2 id="new-flight" className="mb-2">
              Another flight
            </h2>
            <NewFlightForm key={lockVersion} lockVersion={lockVersion} action={addFlightAction.bind(null, space, id)} />
          </section>
          <details className="mt-6 max-w-xl">
            <summary className="target">Title, day and note</summary>
            <ChangeTastingForm
              key={lockVersion}
              tasting={tasting}
              lockVersion={lockVersion}
              action={changeTastingAction.bind(null, space, id)}
            />
          </details>
          <MoveForm
            title="Open the tasting"
            button="Open for judging"
            pending="Opening…"
            hidden={{ lockVersion }}
            action={openTastingAction.bind(null, space, id)}
          >
            From then on entries, panel and orders stay as they are; judges and pourers are told. Print labels before
            you pour.
          </MoveForm>
          <MoveForm
            title="Throw this tasting away"
            button="Throw it away for good"
            pending="Throwing away…"
            hidden={{ lockVersion }}
            action={discardTastingAction.bind(null, space, id)}
          >
            Its flights, entries and panel go with it. Nothing was judged yet.
          </MoveForm>
        </>
      ) : null}
    </>
  );
}
