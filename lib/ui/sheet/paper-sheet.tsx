"use client";

import { useEffect, useState, type ReactElement, type ReactNode } from "react";
import { usePrinting } from "../use-printing";
import { whenIdle } from "../when-idle";
import type { RecipeSheet, RecipeSheetProps } from "./recipe-sheet";

/**
 * What stands on the screen, and the recipe's sheet in its place on paper; `sheet` null where there is none. Nobody waits for the sheet: its code is fetched
 * once the page has nothing else to do, and it is computed when printing begins. Whoever prints before gets the screen.
 */
export function PaperSheet({
  sheet,
  children,
}: {
  readonly sheet: RecipeSheetProps | null;
  readonly children: ReactNode;
}): ReactElement {
  const hasSheet = sheet !== null;
  const [Sheet, setSheet] = useState<typeof RecipeSheet | null>(null);
  const printedAt = usePrinting();
  useEffect(() => {
    if (!hasSheet) return;
    return whenIdle(() => {
      import("./recipe-sheet").then(
        (fetched) => setSheet(() => fetched.RecipeSheet),
        // Without a network the screen is printed.
        () => undefined,
      );
    });
  }, [hasSheet]);
  const isReady = sheet !== null && Sheet !== null;
  return (
    <>
      {isReady && printedAt !== null ? <Sheet {...sheet} printedAt={printedAt} /> : null}
      <div className={isReady ? "print:hidden" : undefined} data-sheet={isReady ? "ready" : undefined}>
        {children}
      </div>
    </>
  );
}
