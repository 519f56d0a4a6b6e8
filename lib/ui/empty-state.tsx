import type { ReactElement, ReactNode } from "react";

/**
 * A place where nothing is yet: what goes here, and the one thing to do next.
 *
 * - `children` a sentence or two; `action` one link or button, left out for those who may not do it.
 */
export interface EmptyStateProps {
  readonly children: ReactNode;
  readonly action?: ReactNode;
}

export function EmptyState({ children, action }: EmptyStateProps): ReactElement {
  return (
    <div className="flex flex-col items-start gap-3 border-y border-rule py-4">
      <p className="text-muted">{children}</p>
      {action}
    </div>
  );
}
