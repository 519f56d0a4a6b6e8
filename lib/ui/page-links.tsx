import Link from "next/link";
import type { ReactElement } from "react";

/** The way to the pages before and after, where a list is longer than one; `hrefOf` makes the address of a page. */
export interface PageLinksProps {
  readonly label: string;
  readonly page: number;
  readonly pages: number;
  readonly hrefOf: (page: number) => string;
}

export function PageLinks({ label, page, pages, hrefOf }: PageLinksProps): ReactElement | null {
  if (pages <= 1) return null;
  return (
    <nav aria-label={label} className="no-print mt-4 flex flex-wrap items-center gap-x-6">
      {page > 1 ? (
        <Link href={hrefOf(page - 1)} rel="prev" className="target">
          Previous page
        </Link>
      ) : null}
      <span>
        Page {page} of {pages}
      </span>
      {page < pages ? (
        <Link href={hrefOf(page + 1)} rel="next" className="target">
          Next page
        </Link>
      ) : null}
    </nav>
  );
}
