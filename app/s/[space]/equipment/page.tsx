import type { Metadata } from "next";
import Link from "next/link";
import { elementPower } from "@/lib/calc/heat";
import type { Equipment } from "@/lib/calc/ledger";
import type { EquipmentProfile } from "@/lib/model/equipment";
import type { Preferences } from "@/lib/model/preferences";
import { roleMay } from "@/lib/model/roles";
import { listEquipment } from "@/lib/server/equipment/reads";
import { requireMember } from "@/lib/server/session";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { EmptyState } from "@/lib/ui/empty-state";
import { Quantity } from "@/lib/ui/quantity";

export const metadata: Metadata = { title: "Kettles" };

interface EquipmentPageProps {
  readonly params: Promise<{ readonly space: string }>;
}

export default async function EquipmentPage({ params }: EquipmentPageProps) {
  const member = await requireMember((await params).space);
  const kettles = await listEquipment(member);
  const home = `/s/${member.spaceSlug}/equipment`;
  const add = roleMay(member.role, "keep equipment") ? (
    <Link href={`${home}/new`} className="button">
      Describe a kettle
    </Link>
  ) : undefined;
  return (
    <>
      <div className="mb-6 flex flex-wrap items-center justify-between gap-4">
        <h1>Kettles</h1>
        {kettles.length === 0 ? null : add}
      </div>
      {kettles.length === 0 ? (
        <EmptyState action={add}>
          An equipment profile says what a kettle does: volumes, losses, power, boil-off. Five answers begin one, and
          brews make it better.
        </EmptyState>
      ) : (
        <DataTable
          caption="Kettles by name"
          captionHidden
          columns={columnsFor(home, member.preferences)}
          records={kettles}
          keyOf={({ id }) => id}
        />
      )}
    </>
  );
}

function columnsFor(home: string, preferences: Preferences): readonly DataColumn<EquipmentProfile>[] {
  return [
    {
      id: "name",
      label: "Kettle",
      cell: ({ id, equipment }) => (
        <Link href={`${home}/${id}`} className="target">
          {equipment.name}
        </Link>
      ),
    },
    { id: "owner", label: "Whose", cell: ({ ownerName }) => ownerName },
    {
      id: "volume",
      label: "Kettle volume",
      isNumber: true,
      cell: ({ equipment }) => (
        <Quantity value={equipment.kettle.capacity} dimension="volume" preferences={preferences} />
      ),
    },
    {
      id: "batch",
      label: "Usual batch",
      isNumber: true,
      cell: ({ equipment }) => <Quantity value={equipment.usualBatch} dimension="volume" preferences={preferences} />,
    },
    { id: "mash", label: "Mash", cell: ({ equipment }) => equipment.mash.kind },
    {
      id: "power",
      label: "Power on its supply",
      isNumber: true,
      cell: ({ equipment }) => <Quantity value={drawnW(equipment)} dimension="power" preferences={preferences} />,
    },
    { id: "revision", label: "Revision", isNumber: true, cell: ({ rev }) => rev },
  ];
}

function drawnW({ kettle }: Equipment): number {
  return elementPower({ ratedW: kettle.ratedPower, ratedV: kettle.ratedVoltage, supplyV: kettle.supplyVoltage });
}
