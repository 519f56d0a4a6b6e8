import type { ReactElement, ReactNode } from "react";

/**
 * Something that the reader should know about the page.
 *
 * - `kind` "attention" when something has to be done; `live` when it appears after the page was read.
 */
export interface NoticeProps {
  readonly children: ReactNode;
  readonly kind?: "plain" | "attention";
  readonly live?: boolean;
}

export function Notice({ children, kind = "plain", live = false }: NoticeProps): ReactElement {
  return (
    <div className={kind === "plain" ? "notice" : "notice notice-attention"} role={live ? "status" : undefined}>
      {children}
    </div>
  );
}
