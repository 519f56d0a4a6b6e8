import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { cache } from "react";
import { findBrew } from "@/lib/server/brews/reads";
import { requireMember } from "@/lib/server/session";
import { BrewHeading } from "@/lib/ui/brew/brew-heading";
import { causesOf, comparisonOf } from "@/lib/model/brew-comparison";
import { comparedReadings } from "@/lib/model/compared-readings";
import { meterReadings } from "@/lib/model/meter-readings";
import { planOf } from "@/lib/model/brew-plan";
import { Notice } from "@/lib/ui/notice";
import { ComparisonView } from "./comparison-view";
import { DayEnergy } from "./day-energy";
import { DayTimes } from "./day-times";
import { askedFor } from "./explained-target";
import { FermentationCourse } from "./fermentation-course";
import { KettleCourse } from "./kettle-course";

interface ComparisonPageProps {
  readonly params: Promise<{ readonly space: string; readonly brew: string }>;
  readonly searchParams: Promise<{ readonly explain?: string | string[]; readonly of?: string | string[] }>;
}

const readBrew = cache(
  async (space: string, id: string) => (await findBrew(await requireMember(space), id)) ?? notFound(),
);

export async function generateMetadata({ params }: ComparisonPageProps): Promise<Metadata> {
  const { space, brew: id } = await params;
  const { title, brewerName } = await readBrew(space, id);
  return { title: `Comparison: ${title}, ${brewerName}` };
}

export default async function ComparisonPage({ params, searchParams }: ComparisonPageProps) {
  const { space, brew: id } = await params;
  const { preferences } = await requireMember(space);
  const brew = await readBrew(space, id);
  const plan = planOf(brew);
  const readings = comparedReadings(brew);
  const comparison = plan === null ? null : comparisonOf(plan, readings, meterReadings(brew));
  const causes = plan === null ? [] : causesOf(plan, readings);
  return (
    <>
      <BrewHeading home={`/s/${space}`} brew={brew} page="comparison" />
      {plan === null || comparison === null ? (
        <div className="mt-6">
          <Notice kind="attention">
            This batch was planned with an older version of the arithmetic, and today’s refuses its figures, so there is
            no comparison. Its run sheet and its readings are as they were.
          </Notice>
        </div>
      ) : (
        <>
          <ComparisonView
            brew={brew}
            comparison={comparison}
            causes={causes}
            preferences={preferences}
            asked={askedFor(await searchParams)}
          />
          <section aria-labelledby="courses" className="mt-10">
            <h2 id="courses">Courses, planned and read</h2>
            <div className="mt-3 grid gap-x-12 gap-y-8 lg:grid-cols-2">
              <KettleCourse brew={brew} ledger={plan.ledger} preferences={preferences} />
              <FermentationCourse brew={brew} preferences={preferences} />
            </div>
          </section>
          <DayTimes brew={brew} preferences={preferences} />
          <DayEnergy brew={brew} rows={comparison.rows} plan={plan} preferences={preferences} />
        </>
      )}
    </>
  );
}
