import type { Limit } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { LimitLine } from "@/lib/ui/equipment/limit-line";

interface LimitListProps {
  readonly limits: readonly Limit[];
  readonly preferences: Preferences;
}

/** Every limit of the kettle and where this brew stands against it; what is broken comes first, with its reason. */
export function LimitList({ limits, preferences }: LimitListProps) {
  const broken = limits.filter(({ ok }) => !ok);
  const kept = limits.filter(({ ok }) => ok);
  return (
    <>
      {broken.length === 0 ? null : (
        <ul className="mb-3 flex flex-col gap-3">
          {broken.map((limit) => (
            <li key={limit.id} className="notice notice-attention max-w-none">
              <LimitLine limit={limit} preferences={preferences} withReason />
            </li>
          ))}
        </ul>
      )}
      <details open={broken.length === 0}>
        <summary className="cursor-pointer py-2">
          {broken.length === 0 ? "Within every limit of the kettle" : `${kept.length} other limits are kept`}
        </summary>
        <ul className="list-ruled max-w-2xl">
          {kept.map((limit) => (
            <li key={limit.id} className="py-1">
              <LimitLine limit={limit} preferences={preferences} />
            </li>
          ))}
        </ul>
      </details>
    </>
  );
}
