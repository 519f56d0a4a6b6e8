import type { ReactElement, ReactNode } from "react";

/** Fields side by side, as many as the width takes. */
export function FieldGrid({ children }: { readonly children: ReactNode }): ReactElement {
  return (
    <div className="grid grid-cols-2 items-end gap-x-4 gap-y-3 sm:grid-cols-3 lg:grid-cols-[repeat(auto-fill,minmax(9.5rem,1fr))]">
      {children}
    </div>
  );
}
