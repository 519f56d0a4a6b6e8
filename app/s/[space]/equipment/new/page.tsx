import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { CAUTIONS } from "@/lib/calc/runsheet";
import { roleMay } from "@/lib/model/roles";
import { requireMember } from "@/lib/server/session";
import { Caution } from "@/lib/ui/caution";
import { AnswersForm } from "./answers-form";

export const metadata: Metadata = { title: "New kettle" };

interface NewEquipmentPageProps {
  readonly params: Promise<{ readonly space: string }>;
}

export default async function NewEquipmentPage({ params }: NewEquipmentPageProps) {
  const member = await requireMember((await params).space);
  if (!roleMay(member.role, "keep equipment")) notFound();
  return (
    <>
      <h1>New kettle</h1>
      <p className="mb-4">
        Five answers begin a profile. Everything else is estimated from them: by what brews on the club’s kettles of the
        kind tell, marked “learned”, else marked “typical”, and wide. A trial with water or a few logged brews make it
        narrower.
      </p>
      <div className="mb-6">
        <Caution>{CAUTIONS.mains}</Caution>
      </div>
      <AnswersForm space={member.spaceSlug} preferences={member.preferences} />
    </>
  );
}
