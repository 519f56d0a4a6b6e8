"use client";

import Link from "next/link";
import { useEffect, useRef } from "react";
import type { Imported } from "@/lib/model/exchange/imported";

interface TakenNoticeProps {
  readonly home: string;
  readonly imported: Imported;
}

/** What the import has made. */
export function TakenNotice({ home, imported: { recipes } }: TakenNoticeProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus();
  }, []);
  return (
    <section aria-labelledby="taken" className="notice">
      <h2 ref={heading} id="taken" tabIndex={-1}>
        {recipes.length === 1 ? "1 recipe imported" : `${String(recipes.length)} recipes imported`}
      </h2>
      <ul>
        {recipes.map(({ id, title }) => (
          <li key={id}>
            <Link href={`${home}/${id}`} className="target">
              {title}
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}
