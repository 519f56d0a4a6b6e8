import Link from "next/link";
import type { Member } from "@/lib/server/session";
import { listTastingsOfBrew } from "@/lib/server/tastings/results-of-brew";

interface BrewTastingsProps {
  readonly member: Member;
  readonly brewId: string;
}

/** Where this brew was judged; nothing before the entries of a tasting were revealed. */
export async function BrewTastings({ member, brewId }: BrewTastingsProps) {
  const tastings = await listTastingsOfBrew(member, brewId);
  if (tastings.length === 0) return null;
  const home = `/s/${member.spaceSlug}/tastings`;
  return (
    <section aria-labelledby="judged" className="mt-6">
      <h2 id="judged">Judged</h2>
      <ul>
        {tastings.map(({ tastingId, title, entryNo }) => (
          <li key={tastingId}>
            <Link className="target" href={`${home}/${tastingId}/feedback?of=all#entry-${String(entryNo)}`}>
              {title}
            </Link>{" "}
            as entry {entryNo}
          </li>
        ))}
      </ul>
    </section>
  );
}
