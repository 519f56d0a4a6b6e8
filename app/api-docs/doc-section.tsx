import type { ReactNode } from "react";

interface DocSectionProps {
  readonly id: string;
  readonly title: string;
  readonly children: ReactNode;
}

/** One table of the page, with its heading. */
export function DocSection({ id, title, children }: DocSectionProps) {
  return (
    <section aria-labelledby={id} className="mt-8">
      <h3 id={id} className="mb-2">
        {title}
      </h3>
      {children}
    </section>
  );
}
