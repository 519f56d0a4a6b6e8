import { Caution } from "@/lib/ui/caution";

/** What can hurt somebody at a tasting. */
export function TastingCautions() {
  return (
    <div className="mt-4 flex flex-col gap-2">
      <Caution>
        Alcohol adds up over many small glasses: spit or leave what you do not need, drink water and eat between
        flights, and settle the way home before the first glass. Nobody drives.
      </Caution>
      <Caution>
        Allergens: beer has barley, often wheat, oats or rye, and may have nuts, milk sugar, finings or fruit. Tell the
        steward beforehand what you must not have; the steward knows what is in the glasses and keeps it from you.
      </Caution>
    </div>
  );
}
