import { beerEntered } from "@/lib/model/tasting/prepare";
import type { FlightKind } from "@/lib/model/tasting/tasting";
import { moveBrew } from "@/lib/server/brews/move";
import { planBrew } from "@/lib/server/brews/plan";
import { inSpace } from "@/lib/server/db";
import { createEquipment } from "@/lib/server/equipment/writes";
import { createRecipe } from "@/lib/server/recipes/writes";
import type { Member } from "@/lib/server/session";
import { createTasting } from "@/lib/server/tastings/create";
import { enterBeer, enterBrews } from "@/lib/server/tastings/entries";
import { addFlight } from "@/lib/server/tastings/flights";
import { openTasting } from "@/lib/server/tastings/open";
import { setPanel } from "@/lib/server/tastings/panel";
import { brewOf, parsedEquipment, parsedRecipe } from "./brewing";
import { join, newClub } from "./club";

/** A brew that is in package, of a recipe of its own. */
export async function packagedBrew(brewer: Member, title = "Test ale"): Promise<string> {
  const { id: recipeId } = await createRecipe(brewer, parsedRecipe(title));
  const { id: equipmentId } = await createEquipment(brewer, parsedEquipment());
  const { id } = await planBrew(brewer, brewOf({ recipeId, equipmentId, sharedBrewId: null }));
  const states = ["on the kettle", "in the fermenter", "in package"] as const;
  for (const [at, state] of states.entries()) await moveBrew(brewer, { id, state, lockVersion: at + 1 });
  return id;
}

export interface TastingClub {
  readonly organiser: Member;
  /** Prepares the tasting, so knows everything. */
  readonly steward: Member;
  /** In the order of their ids. */
  readonly judges: readonly [Member, Member, Member];
  readonly pourer: Member;
  /** Brews two of the entries and judges none. */
  readonly brewer: Member;
}

export async function newTastingClub(): Promise<TastingClub> {
  const { organiser, steward, member: brewer } = await newClub("steward", "member");
  const joined = [await join(organiser, "judge"), await join(organiser, "judge"), await join(organiser, "judge")];
  const [first, second, third] = joined.sort((a, b) => (a.userId < b.userId ? -1 : 1));
  if (first === undefined || second === undefined || third === undefined) throw new Error("three judges joined");
  return { organiser, steward, brewer, pourer: await join(organiser, "guest"), judges: [first, second, third] };
}

/** The version of a draft as its steward sees it now. */
export async function seenNow(
  steward: Member,
  id: string,
): Promise<{ readonly id: string; readonly lockVersion: number }> {
  const { spaceId, userId } = steward;
  const { lockVersion } = await inSpace(spaceId, userId, (tx) =>
    tx.tasting.findUniqueOrThrow({ where: { spaceId_id: { spaceId, id } }, select: { lockVersion: true } }),
  );
  return { id, lockVersion };
}

export async function draftTasting(steward: Member, title = "Spring tasting"): Promise<string> {
  const head = { title, heldOn: "2027-04-24", note: "", stewardId: steward.userId, sharedBrewId: null };
  return (await createTasting(steward, head)).id;
}

export async function flightIn(steward: Member, id: string, kind: FlightKind = "scored"): Promise<number> {
  const flight = { title: kind === "scored" ? "Pale ales" : "Two ales", kind, palateLimit: null };
  return (await addFlight(steward, { ...(await seenNow(steward, id)), ...flight })).flightNo;
}

const UNKNOWN = { originalGravity: null, finalGravity: null, alcohol: null, bitterness: null, colour: null };

/** A beer from elsewhere, by its name. */
export async function outsideBeer(steward: Member, id: string, flightNo: number, beerName: string): Promise<number> {
  const beer = { flightNo, beerName, brewerName: "A neighbour", figures: UNKNOWN };
  return (await enterBeer(steward, beerEntered.parse({ ...(await seenNow(steward, id)), ...beer }))).entryNo;
}

/** An open tasting of two beers from elsewhere, with one judge. */
export async function openTastingOf(steward: Member, judge: Member): Promise<string> {
  const id = await draftTasting(steward);
  const flightNo = await flightIn(steward, id);
  for (const name of ["Millpond porter", "Lantern stout"]) await outsideBeer(steward, id, flightNo, name);
  await setPanel(steward, { ...(await seenNow(steward, id)), flightNo, judges: [judge.userId], pourers: [] });
  await openTasting(steward, await seenNow(steward, id));
  return id;
}

export interface OpenTasting extends TastingClub {
  readonly id: string;
  readonly flightNo: number;
  readonly brewIds: readonly string[];
  /** By blind code, ascending. */
  readonly entryNos: readonly number[];
}

/**
 * A club's open tasting: a scored flight of four entries, two of them brews of the club, three judges and a pourer; with a
 * triangle of two more beers where asked for.
 */
export async function openedTasting(a: { readonly triangle?: boolean } = {}): Promise<OpenTasting> {
  const club = await newTastingClub();
  const { steward, brewer, judges, pourer } = club;
  const brewIds = [await packagedBrew(brewer, "Hedgerow ale"), await packagedBrew(brewer, "Towpath bitter")];
  const id = await draftTasting(steward);
  const flightNo = await flightIn(steward, id);
  await enterBrews(steward, { ...(await seenNow(steward, id)), flightNo, brewIds });
  for (const name of ["Millpond porter", "Lantern stout"]) await outsideBeer(steward, id, flightNo, name);
  const panel = { judges: judges.map(({ userId }) => userId), pourers: [pourer.userId] };
  await setPanel(steward, { ...(await seenNow(steward, id)), flightNo, ...panel });
  if (a.triangle === true) {
    const test = await flightIn(steward, id, "triangle");
    for (const name of ["Wharf mild", "Orchard mild"]) await outsideBeer(steward, id, test, name);
    await setPanel(steward, { ...(await seenNow(steward, id)), flightNo: test, ...panel });
  }
  await openTasting(steward, await seenNow(steward, id));
  const entryNos = await inSpace(steward.spaceId, steward.userId, async (tx) => {
    const rows = await tx.tastingEntry.findMany({ where: { tastingId: id, flightNo }, orderBy: { entryNo: "asc" } });
    return rows.map(({ entryNo }) => entryNo);
  });
  return { ...club, id, flightNo, brewIds, entryNos };
}
