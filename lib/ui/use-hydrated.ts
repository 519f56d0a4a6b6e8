import { useSyncExternalStore } from "react";

const never = (): (() => void) => () => undefined;

/** Whether the page has its scripts. A form that cannot be sent without them keeps its button shut until then. */
export function useHydrated(): boolean {
  return useSyncExternalStore(
    never,
    () => true,
    () => false,
  );
}
