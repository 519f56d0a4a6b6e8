import type { ActionResult } from "@/lib/model/action-result";
import type { ResultSummary } from "@/lib/model/published-result";
import { Day } from "@/lib/ui/day";
import { PublicAddresses, type PublicAddress } from "@/lib/ui/public-addresses";

interface ResultListProps {
  readonly results: readonly ResultSummary[];
  readonly withdraw: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** The results of this shared brew that are public, and those that were. */
export function ResultList({ results, withdraw }: ResultListProps) {
  return <PublicAddresses addresses={results.map(toAddress)} withdraw={withdraw} />;
}

function toAddress({ address, publishedAt, withdrawnAt }: ResultSummary): PublicAddress {
  const figures = (
    <>
      The figures of <Day at={publishedAt} />
    </>
  );
  const about =
    withdrawnAt === null ? (
      figures
    ) : (
      <>
        {figures}, withdrawn <Day at={withdrawnAt} />
      </>
    );
  return {
    address,
    path: `/p/results/${address}`,
    isGone: withdrawnAt !== null,
    about,
    withdraw: "Withdraw this result",
  };
}
