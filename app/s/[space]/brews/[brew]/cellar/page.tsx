import type { Metadata } from "next";
import { CAUTIONS } from "@/lib/calc/runsheet";
import { fermentationOf } from "@/lib/model/cellar/fermentation";
import { remindersOf } from "@/lib/model/cellar/reminders";
import { BrewHeading } from "@/lib/ui/brew/brew-heading";
import { Caution } from "@/lib/ui/caution";
import { logAction } from "../log-action";
import { readBrew } from "../read-brew";
import { AdditionSection } from "./addition-section";
import { CellarLog } from "./cellar-log";
import { CellarReadings } from "./cellar-readings";
import { CourseSection } from "./course-section";
import { CsvSection } from "./csv-section";
import { PitchSection } from "./pitch-section";
import { ReminderList } from "./reminder-list";

interface CellarPageProps {
  readonly params: Promise<{ readonly space: string; readonly brew: string }>;
  readonly searchParams: Promise<{ readonly readings?: string | string[] }>;
}

export async function generateMetadata({ params }: CellarPageProps): Promise<Metadata> {
  const { space, brew: id } = await params;
  const { title, brewerName } = (await readBrew(space, id)).brew;
  return { title: `Cellar: ${title}, ${brewerName}` };
}

export default async function CellarPage({ params, searchParams }: CellarPageProps) {
  const { space, brew: id } = await params;
  const { member, brew } = await readBrew(space, id);
  const { preferences } = member;
  const fermentation = fermentationOf(brew);
  // What crosses to the browser is no more of the brew than a form needs.
  const { original } = fermentation;
  const now = new Date();
  const reminders = remindersOf({ ...brew, fermentation, now: now.getTime() });
  const record = logAction.bind(null, space, id);
  const parts = { brew, fermentation, preferences, record };
  return (
    <div className="brew-day">
      <BrewHeading home={`/s/${space}`} brew={brew} page="cellar" />
      <div className="my-6 flex flex-col gap-3">
        <Caution>{CAUTIONS.pressure}</Caution>
        <Caution>{CAUTIONS["closed room"]}</Caution>
      </div>
      <ReminderList brew={brew} reminders={reminders} record={record} />
      <div className="grid gap-x-12 gap-y-10 lg:grid-cols-2">
        <div className="flex min-w-0 flex-col gap-10">
          <CourseSection {...parts} now={now.getTime()} />
          <CellarLog {...parts} showAll={(await searchParams).readings === "all"} />
        </div>
        <div className="flex min-w-0 flex-col gap-10">
          {brew.mayWrite ? <CellarReadings brewId={id} original={original} {...{ preferences, record }} /> : null}
          <PitchSection {...parts} />
          <AdditionSection {...parts} />
          {brew.mayWrite ? <CsvSection address={`/s/${space}/brews/${id}/cellar/csv`} /> : null}
        </div>
      </div>
    </div>
  );
}
