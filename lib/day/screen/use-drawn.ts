import { useEffect, useState } from "react";

/** Whether the page was drawn once: what lies far from the thumb is drawn after what lies under it. */
export function useDrawn(): boolean {
  const [isDrawn, setDrawn] = useState(false);
  useEffect(() => setDrawn(true), []);
  return isDrawn;
}
