import Link from "next/link";
import type { ActionResult } from "@/lib/model/action-result";
import type { ResultSummary } from "@/lib/model/published-result";
import { Day } from "@/lib/ui/day";
import { WithdrawForm } from "@/lib/ui/withdraw-form";

interface ResultListProps {
  readonly results: readonly ResultSummary[];
  readonly withdraw: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** The results of this shared brew that are public, and those that were. */
export function ResultList({ results, withdraw }: ResultListProps) {
  if (results.length === 0) return null;
  return (
    <section aria-labelledby="public" className="mt-8">
      <h2 id="public" className="mb-3">
        Public addresses
      </h2>
      <ul className="list-ruled">
        {results.map(({ address, publishedAt, withdrawnAt }) => (
          <li key={address} className="flex flex-wrap items-center justify-between gap-4 py-2">
            {withdrawnAt === null ? (
              <>
                <span>
                  <Link href={`/p/results/${address}`} className="target wrap-anywhere">
                    /p/results/{address}
                  </Link>
                  <span className="block text-sm text-muted">
                    The figures of <Day at={publishedAt} />
                  </span>
                </span>
                <WithdrawForm address={address} action={withdraw}>
                  Withdraw this result
                </WithdrawForm>
              </>
            ) : (
              <span className="text-muted">
                The figures of <Day at={publishedAt} />, withdrawn <Day at={withdrawnAt} />
              </span>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
