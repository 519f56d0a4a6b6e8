import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { dayOf } from "@/lib/model/lot-today";
import { listIngredients } from "@/lib/server/ingredients/reads";
import { listLosses } from "@/lib/server/lots/figures";
import { findLot, listMovements } from "@/lib/server/lots/reads";
import { requireMember } from "@/lib/server/session";
import { FigureTable } from "@/lib/ui/ingredient/figure-table";
import { lotFigureList } from "@/lib/ui/ingredient/ingredient-figures";
import { Notice } from "@/lib/ui/notice";
import { ingredientPath } from "../ingredient-path";
import { knownNames } from "../known-names";
import { LotForms } from "./lot-forms";
import { LotHead } from "./lot-head";
import { MovementTable } from "./movement-table";
import { TodaySection } from "./today-section";

interface LotPageProps {
  readonly params: Promise<{ readonly space: string; readonly lot: string }>;
}

const read = cache(async (space: string, id: string) => {
  const member = await requireMember(space);
  return { member, lot: (await findLot(member, id)) ?? notFound() };
});

export async function generateMetadata({ params }: LotPageProps): Promise<Metadata> {
  const { space, lot: id } = await params;
  const { lot } = await read(space, id);
  return { title: `${lot.name}, ${lot.label}` };
}

export default async function LotPage({ params }: LotPageProps) {
  const { space, lot: id } = await params;
  const { member, lot } = await read(space, id);
  const [movements, lossOf, own] = await Promise.all([
    listMovements(member, id),
    listLosses(member),
    listIngredients(member),
  ]);
  const { spaceSlug, preferences } = member;
  const { name, label, what, notes } = lot;
  const figures = lotFigureList(what);
  const today = dayOf(new Date());
  return (
    <>
      <p className="no-print">
        <Link href={ingredientPath(`/s/${spaceSlug}/ingredients`, lot, own)} className="target">
          {name}
        </Link>
      </p>
      <h1>
        {name}, {label}
      </h1>
      {lot.isArchived ? <Notice>This lot is put away: sheets do not offer it.</Notice> : null}
      <LotHead {...{ lot, today, preferences }} />
      {figures.length === 0 ? null : <FigureTable caption="Its analysis" figures={figures} preferences={preferences} />}
      <h2 className="mt-8 mb-2">Today</h2>
      <TodaySection {...{ what, today, preferences }} lossIn6Months={lossOf(name)} />
      {notes === "" ? null : <p className="mt-4 max-w-3xl whitespace-pre-line">{notes}</p>}
      <h2 className="mt-8 mb-2">What came and went</h2>
      <MovementTable space={spaceSlug} kind={what.kind} movements={movements} preferences={preferences} />
      {lot.mayWrite ? (
        <LotForms space={spaceSlug} lot={lot} names={knownNames(what.kind, own)} preferences={preferences} />
      ) : null}
    </>
  );
}
