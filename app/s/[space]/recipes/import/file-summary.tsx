"use client";

import { useEffect, useRef } from "react";
import type { ImportPreview } from "@/lib/model/exchange/preview";
import { Notice } from "@/lib/ui/notice";

const FORMAT_NAMES = { beerjson: "BeerJSON", beerxml: "BeerXML" } as const;

/** What kind of file it is, and what is to be known of it as a whole. */
export function FileSummary({ format, version, notices, recipes }: ImportPreview) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus();
  }, []);
  return (
    <>
      <h2 ref={heading} tabIndex={-1} className="mb-2">
        What would be taken
      </h2>
      <p className="mb-4">
        {FORMAT_NAMES[format]} {version}, {recipes.length} {recipes.length === 1 ? "recipe" : "recipes"}. Nothing is
        kept yet.
      </p>
      {notices.length > 0 && (
        <Notice>
          <ul>
            {notices.map((notice) => (
              <li key={notice}>{notice}</li>
            ))}
          </ul>
        </Notice>
      )}
    </>
  );
}
