import type { ReactElement, ReactNode } from "react";

/** A safety caution, where it matters, short and once. It cannot be put away. */
export function Caution({ children }: { readonly children: ReactNode }): ReactElement {
  return (
    <p className="caution">
      <strong className="caution-word">Caution.</strong> {children}
    </p>
  );
}
