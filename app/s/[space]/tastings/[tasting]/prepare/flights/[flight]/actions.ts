"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import {
  beerEntered,
  brewsEntered,
  draftSeen,
  flightChange,
  flightChosen,
  flightPanel,
} from "@/lib/model/tasting/prepare";
import { redrawOrders } from "@/lib/server/tastings/create";
import { enterBeer, enterBrews } from "@/lib/server/tastings/entries";
import { changeFlight, removeFlight } from "@/lib/server/tastings/flights";
import { setPanel } from "@/lib/server/tastings/panel";
import { nullIfEmpty } from "../../../../null-if-empty";
import { draftAction, type DraftAt } from "../../draft-action";

type Done = ActionResult<void>;

const chosen = { id: z.string(), lockVersion: z.string(), flightNo: z.string() };

/** Names of the boxes that are checked, and of the lists in which somebody has a part. */
const namedBy = (form: Readonly<Record<string, unknown>>, prefix: string): readonly string[] =>
  Object.keys(form).flatMap((name) => (name.startsWith(prefix) ? [name.slice(prefix.length)] : []));

const brewsForm = z
  .object(chosen)
  .catchall(z.literal("on"))
  .transform((form): unknown => {
    const { id, lockVersion, flightNo } = form;
    return { id, lockVersion, flightNo, brewIds: namedBy(form, "brew.") };
  })
  .pipe(brewsEntered);

const panelForm = z
  .object(chosen)
  .catchall(z.enum(["", "judge", "pourer"]))
  .transform((form): unknown => {
    const { id, lockVersion, flightNo } = form;
    const inPart = (part: string): readonly string[] =>
      namedBy(form, "part.").filter((userId) => form[`part.${userId}`] === part);
    return { id, lockVersion, flightNo, judges: inPart("judge"), pourers: inPart("pourer") };
  })
  .pipe(flightPanel);

const FIGURES = ["originalGravity", "finalGravity", "alcohol", "bitterness", "colour"] as const;

const beerForm = z
  .strictObject({
    ...chosen,
    ...{ beerName: z.string(), brewerName: z.string() },
    ...{ originalGravity: z.string(), finalGravity: z.string(), alcohol: z.string() },
    ...{ bitterness: z.string(), colour: z.string() },
  })
  .transform(({ id, lockVersion, flightNo, beerName, brewerName, ...figures }): unknown => ({
    ...{ id, lockVersion, flightNo, beerName, brewerName },
    figures: Object.fromEntries(FIGURES.map((name) => [name, nullIfEmpty(figures[name].replace(",", "."))])),
  }))
  .pipe(beerEntered);

const changeForm = z
  .strictObject({ ...chosen, title: z.string(), palateLimit: z.string() })
  .transform((form): unknown => ({ ...form, palateLimit: nullIfEmpty(form.palateLimit) }))
  .pipe(flightChange);

export async function enterBrewsAction(at: DraftAt, previous: Done | null, form: FormData): Promise<Done> {
  return draftAction(at, brewsForm, enterBrews, { previous, form });
}

export async function enterBeerAction(at: DraftAt, previous: Done | null, form: FormData): Promise<Done> {
  return draftAction(at, beerForm, enterBeer, { previous, form });
}

export async function setPanelAction(at: DraftAt, previous: Done | null, form: FormData): Promise<Done> {
  return draftAction(at, panelForm, setPanel, { previous, form });
}

export async function changeFlightAction(at: DraftAt, previous: Done | null, form: FormData): Promise<Done> {
  return draftAction(at, changeForm, changeFlight, { previous, form });
}

export async function redrawOrdersAction(at: DraftAt, previous: Done | null, form: FormData): Promise<Done> {
  return draftAction(at, draftSeen, redrawOrders, { previous, form });
}

export async function removeFlightAction(at: DraftAt, previous: Done | null, form: FormData): Promise<Done> {
  const remove: typeof removeFlight = async (member, input) => {
    await removeFlight(member, input);
    redirect(`/s/${at.space}/tastings/${at.id}/prepare`);
  };
  return draftAction(at, flightChosen, remove, { previous, form });
}
