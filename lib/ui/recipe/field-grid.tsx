import type { ReactElement, ReactNode } from "react";

/** Fields side by side, as many as the width takes. */
export function FieldGrid({ children }: { readonly children: ReactNode }): ReactElement {
  return (
    <div className="grid grid-cols-2 items-end gap-x-3 gap-y-2 sm:grid-cols-[repeat(auto-fill,minmax(8rem,1fr))]">
      {children}
    </div>
  );
}
