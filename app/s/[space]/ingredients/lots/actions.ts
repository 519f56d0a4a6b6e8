"use server";

import { archiving } from "@/lib/model/ingredient";
import { moveLot } from "@/lib/server/lots/move";
import { archiveLot, createLot, saveLot } from "@/lib/server/lots/writes";
import { kept, kindWord, made, type Kept, type Made } from "../keep";
import { lotChangeForm, lotMoveForm, newLotForm } from "./lot-form-schema";

export async function createLotAction(
  space: string,
  kind: string,
  previous: Made | null,
  form: FormData,
): Promise<Made> {
  return made(
    { space, previous, form, under: "ingredients/lots" },
    (member) => newLotForm(kindWord.parse(kind), member.preferences),
    createLot,
  );
}

export async function saveLotAction(space: string, kind: string, previous: Kept | null, form: FormData): Promise<Kept> {
  const sent = { space, previous, form };
  return kept(sent, (member) => lotChangeForm(kindWord.parse(kind), member.preferences), saveLot);
}

export async function moveLotAction(space: string, kind: string, previous: Kept | null, form: FormData): Promise<Kept> {
  const sent = { space, previous, form };
  return kept(sent, (member) => lotMoveForm(kindWord.parse(kind), member.preferences), moveLot);
}

export async function archiveLotAction(space: string, previous: Kept | null, form: FormData): Promise<Kept> {
  return kept({ space, previous, form }, () => archiving, archiveLot);
}
