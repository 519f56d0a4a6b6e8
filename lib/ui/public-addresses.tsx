import Link from "next/link";
import type { ReactElement, ReactNode } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import { WithdrawForm } from "./withdraw-form";

/**
 * Something that is public at an address, or was.
 *
 * - `path` of the page; `about` what is seen there, or since when it is gone; `withdraw` the words of the button.
 */
export interface PublicAddress {
  readonly address: string;
  readonly path: string;
  readonly isGone: boolean;
  readonly about: ReactNode;
  readonly withdraw: string;
}

interface PublicAddressesProps {
  readonly addresses: readonly PublicAddress[];
  readonly withdraw: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** What is public, each with the button that ends it, and what was. */
export function PublicAddresses({ addresses, withdraw }: PublicAddressesProps): ReactElement | null {
  if (addresses.length === 0) return null;
  return (
    <section aria-labelledby="public" className="mt-8">
      <h2 id="public" className="mb-3">
        Public addresses
      </h2>
      <ul className="list-ruled">
        {addresses.map(({ address, path, isGone, about, withdraw: words }) => (
          <li key={address} className="flex flex-wrap items-center justify-between gap-4 py-2">
            {isGone ? (
              <span className="text-muted">{about}</span>
            ) : (
              <>
                <span>
                  <Link href={path} className="target wrap-anywhere">
                    {path}
                  </Link>
                  <span className="block text-sm text-muted">{about}</span>
                </span>
                <WithdrawForm address={address} action={withdraw}>
                  {words}
                </WithdrawForm>
              </>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
