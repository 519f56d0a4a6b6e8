"use client";

import { useRouter } from "next/navigation";
import { ProfileForm, type ProfileFormProps } from "@/lib/ui/equipment/profile-form";
import { saveEquipmentAction } from "./actions";

interface ProfileScreenProps extends Omit<ProfileFormProps, "send"> {
  readonly space: string;
  readonly id: string;
}

/** A profile that the reader may change. */
export function ProfileScreen({ space, id, ...shown }: ProfileScreenProps) {
  const router = useRouter();
  const send: ProfileFormProps["send"] = async (change) => {
    const answer = await saveEquipmentAction({ space, id, ...change });
    if (answer.status === "ok" && answer.data.ok) router.refresh();
    return answer;
  };
  return <ProfileForm {...shown} send={send} />;
}
