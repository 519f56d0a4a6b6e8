import type { Metadata } from "next";
import Link from "next/link";
import { calendarAddressEnd } from "@/lib/model/calendar-address";
import { calendarSince } from "@/lib/server/calendar/tokens";
import { requireMember } from "@/lib/server/session";
import { listOwnBrewDays } from "@/lib/server/shared-brews/own-days";
import { Day } from "@/lib/ui/day";
import { EmptyState } from "@/lib/ui/empty-state";
import { makeCalendarAction, revokeCalendarAction } from "./actions";
import { BrewDayTable } from "./brew-day-table";
import { FeedForm } from "./feed-form";
import { RevokeFeedForm } from "./revoke-feed-form";

export const metadata: Metadata = { title: "Your brew days" };

interface CalendarPageProps {
  readonly params: Promise<{ readonly space: string }>;
}

export default async function CalendarPage({ params }: CalendarPageProps) {
  const member = await requireMember((await params).space);
  const space = member.spaceSlug;
  const [days, since] = await Promise.all([listOwnBrewDays(member), calendarSince(member)]);
  return (
    <>
      <h1 className="mb-4">Your brew days</h1>
      {days.length === 0 ? (
        <EmptyState action={<Link href={`/s/${space}/shared-brews`}>Shared brews</Link>}>
          The days that you choose in shared brews stand here, and in your own calendar.
        </EmptyState>
      ) : (
        <BrewDayTable home={`/s/${space}`} days={days} />
      )}
      <section aria-labelledby="feed" className="mt-10 max-w-2xl">
        <h2 id="feed" className="mb-2">
          In your own calendar
        </h2>
        <p className="mb-4">
          A calendar program can read your brew days from a private address: it follows when a day or a plan changes.
          {since === null ? null : (
            <>
              {" "}
              Yours was made on <Day at={since} /> and works until <Day at={calendarAddressEnd(since)} />; then make
              another.
            </>
          )}
        </p>
        <div className="flex flex-col gap-4">
          <FeedForm hasOne={since !== null} action={makeCalendarAction.bind(null, space)} />
          {since === null ? null : <RevokeFeedForm action={revokeCalendarAction.bind(null, space)} />}
        </div>
      </section>
    </>
  );
}
