import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { findBrew } from "@/lib/server/brews/reads";
import { requireMember } from "@/lib/server/session";
import { BrewHeading } from "@/lib/ui/brew/brew-heading";
import { planOf } from "@/lib/model/brew-plan";
import { dropBrewAction, moveBrewAction, recordReadingAction } from "./actions";
import { BrewLots } from "./brew-lots";
import { BrewTastings } from "./brew-tastings";
import { DropSection } from "./drop-section";
import { logAction } from "./log-action";
import { MeterSection } from "./meter-section";
import { PlanBehindNotice } from "./plan-behind-notice";
import { ReadingLog } from "./reading-log";
import { RunSheet } from "./run-sheet";
import { StateLine } from "./state-line";
import { StateMover } from "./state-mover";
import { TemperatureChart } from "./temperature-chart";

interface BrewPageProps {
  readonly params: Promise<{ readonly space: string; readonly brew: string }>;
}

const readBrew = cache(
  async (space: string, id: string) => (await findBrew(await requireMember(space), id)) ?? notFound(),
);

export async function generateMetadata({ params }: BrewPageProps): Promise<Metadata> {
  const { space, brew: id } = await params;
  const { title, brewerName } = await readBrew(space, id);
  return { title: `Run sheet: ${title}, ${brewerName}` };
}

export default async function BrewPage({ params }: BrewPageProps) {
  const { space, brew: id } = await params;
  const member = await requireMember(space);
  const { preferences } = member;
  const brew = await readBrew(space, id);
  const plan = planOf(brew);
  const home = `/s/${space}`;
  return (
    <div className="brew-day">
      <BrewHeading home={home} brew={brew} page="run sheet" />
      <PlanBehindNotice member={member} brew={brew} />
      <section aria-label="State" className="my-6">
        <StateLine state={brew.state} />
        {brew.mayWrite ? (
          <StateMover
            brewId={brew.id}
            state={brew.state}
            lockVersion={brew.lockVersion}
            move={moveBrewAction.bind(null, space)}
          />
        ) : null}
        <DropSection brew={brew} action={dropBrewAction.bind(null, space, brew.id)} />
      </section>
      <div className="grid gap-x-12 gap-y-10 lg:grid-cols-[minmax(0,3fr)_minmax(0,2fr)]">
        <div>
          <RunSheet {...{ home, brew, plan, preferences }} record={recordReadingAction.bind(null, space)} />
          <MeterSection brew={brew} preferences={preferences} record={logAction.bind(null, space, id)} />
        </div>
        <aside aria-label="The day so far">
          {plan === null ? null : <TemperatureChart brew={brew} ledger={plan.ledger} preferences={preferences} />}
          <ReadingLog readings={brew.readings} preferences={preferences} />
          <BrewLots member={member} brew={brew} />
          <BrewTastings member={member} brewId={brew.id} />
          {brew.mayWrite ? (
            <p className="no-print mt-6">
              <Link href={`${home}/sensors?brew=${brew.id}`} className="target">
                Readings by a sensor or a script
              </Link>
            </p>
          ) : null}
        </aside>
      </div>
    </div>
  );
}
