import type { ActionResult } from "@/lib/model/action-result";
import type { PublicationSummary } from "@/lib/model/publication";
import { Day } from "@/lib/ui/day";
import { PublicAddresses, type PublicAddress } from "@/lib/ui/public-addresses";

interface PublicationListProps {
  readonly publications: readonly PublicationSummary[];
  readonly withdraw: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** What of this recipe is public, and what was. */
export function PublicationList({ publications, withdraw }: PublicationListProps) {
  return <PublicAddresses addresses={publications.map(toAddress)} withdraw={withdraw} />;
}

function toAddress({ rev, address, authorName, publishedAt, withdrawnAt }: PublicationSummary): PublicAddress {
  const path = `/p/${address}`;
  const about =
    withdrawnAt === null ? (
      <>
        Revision {rev}, by {authorName}, since <Day at={publishedAt} />
      </>
    ) : (
      <>
        Revision {rev}, withdrawn <Day at={withdrawnAt} />; published again, it is back at {path}
      </>
    );
  return { address, path, isGone: withdrawnAt !== null, about, withdraw: `Withdraw revision ${rev}` };
}
