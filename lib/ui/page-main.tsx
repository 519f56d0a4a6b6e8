import type { ReactElement, ReactNode } from "react";

/**
 * The main part of a page, where the skip link leads.
 *
 * - `narrow` for pages that are read or filled in rather than compared.
 */
export interface PageMainProps {
  readonly children: ReactNode;
  readonly narrow?: boolean;
}

export function PageMain({ children, narrow = false }: PageMainProps): ReactElement {
  return (
    <main id="content" tabIndex={-1} className={narrow ? "page page-narrow" : "page"}>
      {children}
    </main>
  );
}
