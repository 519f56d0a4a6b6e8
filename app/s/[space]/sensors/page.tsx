import type { Metadata } from "next";
import Link from "next/link";
import { roleMay } from "@/lib/model/roles";
import { listSensorKeys } from "@/lib/server/sensors/tokens";
import { listWritableBrews } from "@/lib/server/sensors/writable-brews";
import { requireMember } from "@/lib/server/session";
import { EmptyState } from "@/lib/ui/empty-state";
import { makeKeyAction, revokeKeyAction } from "./actions";
import { KeyForm } from "./key-form";
import { KeyTable } from "./key-table";

export const metadata: Metadata = { title: "Sensors and scripts" };

interface SensorsPageProps {
  readonly params: Promise<{ readonly space: string }>;
  readonly searchParams: Promise<{ readonly brew?: string | readonly string[] }>;
}

export default async function SensorsPage({ params, searchParams }: SensorsPageProps) {
  const member = await requireMember((await params).space);
  const { brew } = await searchParams;
  const [keys, brews] = await Promise.all([listSensorKeys(member), listWritableBrews(member)]);
  const space = member.spaceSlug;
  return (
    <>
      <h1 className="mb-4">Sensors and scripts</h1>
      <p className="mb-8 max-w-2xl">
        A probe in the fermenter, or a script, posts its readings into the log of a brew with a key that you make here.{" "}
        <Link href="/api-docs">How to post readings</Link>
      </p>
      <div className="grid items-start gap-x-12 gap-y-10 lg:grid-cols-[minmax(0,3fr)_minmax(0,2fr)]">
        <section aria-labelledby="keys">
          <h2 id="keys" className="mb-3">
            Your keys
          </h2>
          {keys.length === 0 ? (
            <EmptyState>You have none in this club.</EmptyState>
          ) : (
            <KeyTable
              home={`/s/${space}`}
              keys={keys}
              now={new Date()}
              revokeAction={revokeKeyAction.bind(null, space)}
            />
          )}
        </section>
        {roleMay(member.role, "brew") ? (
          <section aria-labelledby="make">
            <h2 id="make" className="mb-4">
              Make a key
            </h2>
            <KeyForm
              brews={brews}
              brewId={brews.find(({ id }) => id === brew)?.id ?? ""}
              action={makeKeyAction.bind(null, space)}
            />
          </section>
        ) : null}
      </div>
    </>
  );
}
