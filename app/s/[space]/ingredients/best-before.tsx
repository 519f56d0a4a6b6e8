import { Day } from "@/lib/ui/day";

/** The day until which a lot keeps; past it, it says so. */
export function BestBefore({ day, today }: { readonly day: string; readonly today: string }) {
  return (
    <>
      <Day at={new Date(day)} />
      {day < today ? <strong> (past)</strong> : null}
    </>
  );
}
