import Link from "next/link";
import type { Brew } from "@/lib/model/brew";
import type { BrewLot } from "@/lib/model/brew-lot";
import { INGREDIENT_KINDS } from "@/lib/model/ingredient-kinds";
import { LOT_UNIT } from "@/lib/model/ingredient-lot";
import { ONE_PACK, rowNeeds, toThousandth, type RowNeed } from "@/lib/model/lot-need";
import { listBrewLots } from "@/lib/server/lots/brew-lots";
import type { Member } from "@/lib/server/session";
import { amountText } from "@/lib/ui/ingredient/amount-text";
import { GiveBackForm } from "./give-back-form";
import { giveBackLotsAction } from "./lots-action";

interface BrewLotsProps {
  readonly member: Member;
  readonly brew: Brew;
}

/** What this brew took from which lot, what it is short of, and the way back while it is only planned. */
export async function BrewLots({ member, brew }: BrewLotsProps) {
  const lots = await listBrewLots(member, brew.id);
  if (lots.length === 0) return null;
  const needs = new Map(rowNeeds(brew.recipe, ONE_PACK).map((need) => [need.path, need]));
  const mayGiveBack = brew.mayWrite && brew.state === "planned" && lots.some(({ isReturned }) => !isReturned);
  return (
    <section aria-labelledby="lots" className="mt-8">
      <h2 id="lots" className="mb-2">
        From the shelf
      </h2>
      <ul className="list-ruled">
        {lots.map((lot) => (
          <li key={lot.path} className="py-1">
            <Taken member={member} lot={lot} need={needs.get(lot.path)} />
          </li>
        ))}
      </ul>
      {mayGiveBack ? <GiveBackForm brewId={brew.id} action={giveBackLotsAction.bind(null, member.spaceSlug)} /> : null}
    </section>
  );
}

interface TakenProps {
  readonly member: Member;
  readonly lot: BrewLot;
  readonly need: RowNeed | undefined;
}

function Taken({ member, lot, need }: TakenProps) {
  const { lotId, label, needed, taken, isReturned, unit } = lot;
  // A row that the recipe no longer names is still counted in the unit of its lot.
  const kind = need?.kind ?? INGREDIENT_KINDS.find((each) => LOT_UNIT[each] === unit) ?? "hop";
  const text = (amount: number): string => amountText(amount, kind, member.preferences);
  const short = toThousandth(needed - taken);
  return (
    <>
      {need === undefined ? null : `${need.name}: `}
      {text(taken)} of{" "}
      <Link href={`/s/${member.spaceSlug}/ingredients/lots/${lotId}`} className="target">
        {label}
      </Link>
      {short > 0 ? <strong>, {text(short)} short</strong> : null}
      {isReturned ? ", put back" : null}
    </>
  );
}
