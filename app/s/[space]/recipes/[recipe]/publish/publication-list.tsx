import Link from "next/link";
import type { ActionResult } from "@/lib/model/action-result";
import type { PublicationSummary } from "@/lib/model/publication";
import { Day } from "@/lib/ui/day";
import { WithdrawForm } from "@/lib/ui/withdraw-form";

interface PublicationListProps {
  readonly publications: readonly PublicationSummary[];
  readonly withdraw: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** What of this recipe is public, and what was. */
export function PublicationList({ publications, withdraw }: PublicationListProps) {
  if (publications.length === 0) return null;
  return (
    <section aria-labelledby="public" className="mt-8">
      <h2 id="public" className="mb-3">
        Public addresses
      </h2>
      <ul className="list-ruled">
        {publications.map(({ rev, address, authorName, publishedAt, withdrawnAt }) => (
          <li key={address} className="flex flex-wrap items-center justify-between gap-4 py-2">
            {withdrawnAt === null ? (
              <>
                <span>
                  <Link href={`/p/${address}`} className="target wrap-anywhere">
                    /p/{address}
                  </Link>
                  <span className="block text-sm text-muted">
                    Revision {rev}, by {authorName}, since <Day at={publishedAt} />
                  </span>
                </span>
                <WithdrawForm address={address} action={withdraw}>
                  Withdraw revision {rev}
                </WithdrawForm>
              </>
            ) : (
              <span className="text-muted">
                Revision {rev}, withdrawn <Day at={withdrawnAt} />; published again, it is back at /p/{address}
              </span>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
