import { describe, expect, it } from "vitest";
import { brewsEntered, flightPanel } from "@/lib/model/tasting/prepare";
import { planBrew } from "@/lib/server/brews/plan";
import { createEquipment } from "@/lib/server/equipment/writes";
import { createRecipe } from "@/lib/server/recipes/writes";
import { changeTasting, createTasting, discardTasting, redrawOrders } from "@/lib/server/tastings/create";
import { enterBrews, placeEntry, removeEntry } from "@/lib/server/tastings/entries";
import { addFlight, removeFlight } from "@/lib/server/tastings/flights";
import { openTasting } from "@/lib/server/tastings/open";
import { setPanel } from "@/lib/server/tastings/panel";
import { findPreparation } from "@/lib/server/tastings/preparation";
import { findTasting, listTastings } from "@/lib/server/tastings/reads";
import { brewOf, parsedEquipment, parsedRecipe } from "../../support/brewing";
import { newClub } from "../../support/club";
import { draftTasting, flightIn, newTastingClub, outsideBeer, packagedBrew, seenNow } from "../../support/tasting";

const HEAD = { title: "Spring tasting", heldOn: null, note: "", sharedBrewId: null };

describe("a draft", () => {
  it("is prepared by its steward alone, and of two windows by the first", async () => {
    const { organiser, steward, judges } = await newTastingClub();
    const id = await draftTasting(steward);
    const seen = await seenNow(steward, id);
    const flight = { ...seen, title: "Ales", kind: "scored" as const, palateLimit: null };
    await expect(addFlight(judges[0], flight)).rejects.toThrow("Only stewards and organisers prepare tastings here.");
    await expect(addFlight(organiser, flight)).rejects.toThrow("Only the steward of a tasting prepares it.");
    expect(await findPreparation(organiser, id)).toBeNull();
    await addFlight(steward, flight);
    await expect(changeTasting(steward, { ...HEAD, ...seen, title: "Too late" })).rejects.toThrow(
      "The tasting was changed since this page was opened: load it again and look.",
    );
    expect((await findTasting(organiser, id))?.title).toBe("Spring tasting");
  });

  it("is begun by whoever may, with a steward who may", async () => {
    const { organiser, steward, brewer, judges } = await newTastingClub();
    await expect(createTasting(judges[0], { ...HEAD, stewardId: steward.userId })).rejects.toThrow("Only stewards");
    await expect(createTasting(organiser, { ...HEAD, stewardId: brewer.userId })).rejects.toThrow(
      "Steward: choose a steward or an organiser of the club.",
    );
    const { organiser: stranger } = await newClub();
    await expect(createTasting(organiser, { ...HEAD, stewardId: stranger.userId })).rejects.toThrow("no such member");
    const { id } = await createTasting(organiser, { ...HEAD, stewardId: steward.userId });
    expect(await findPreparation(steward, id)).toMatchObject({ id, flights: [] });
    expect(await findTasting(stranger, id)).toBeNull();
  });

  it("is thrown away with all that is in it", async () => {
    const { steward } = await newTastingClub();
    const id = await draftTasting(steward);
    await outsideBeer(steward, id, await flightIn(steward, id), "Millpond porter");
    await discardTasting(steward, await seenNow(steward, id));
    expect(await listTastings(steward)).toEqual([]);
  });

  it("is not opened before it can be poured, and says what is missing", async () => {
    const { steward, judges } = await newTastingClub();
    const id = await draftTasting(steward);
    const open = async (): Promise<void> => openTasting(steward, await seenNow(steward, id));
    await expect(open()).rejects.toThrow("There is no flight yet");
    const flightNo = await flightIn(steward, id);
    await expect(open()).rejects.toThrow("Pale ales has no entries.");
    await outsideBeer(steward, id, flightNo, "Millpond porter");
    await expect(open()).rejects.toThrow("Pale ales has no judges.");
    const test = await flightIn(steward, id, "triangle");
    await outsideBeer(steward, id, test, "Lantern stout");
    for (const each of [flightNo, test]) {
      await setPanel(steward, {
        ...(await seenNow(steward, id)),
        flightNo: each,
        judges: [judges[0].userId],
        pourers: [],
      });
    }
    await expect(open()).rejects.toThrow("Two ales has 1 entries; a triangle test takes two.");
    await removeFlight(steward, { ...(await seenNow(steward, id)), flightNo: test });
    await open();
  });
});

describe("entries", () => {
  it("are brews in package, once each, under codes of three digits that differ", async () => {
    const { steward, brewer } = await newTastingClub();
    const id = await draftTasting(steward);
    const flightNo = await flightIn(steward, id);
    const brewIds = [await packagedBrew(brewer), await packagedBrew(brewer), await packagedBrew(brewer)];
    await enterBrews(steward, { ...(await seenNow(steward, id)), flightNo, brewIds });
    await expect(
      enterBrews(steward, { ...(await seenNow(steward, id)), flightNo, brewIds: brewIds.slice(0, 1) }),
    ).rejects.toThrow(/^Test ale is entered already, as \d{3}\.$/);
    const entries = (await findPreparation(steward, id))?.flights[0]?.entries ?? [];
    const codes = entries.map(({ entryNo }) => entryNo);
    expect(new Set(codes).size).toBe(3);
    expect(codes.every((code) => code >= 100 && code <= 999)).toBe(true);
    expect(codes).toEqual([...codes].sort((a, b) => a - b));
    // What was computed when it was planned is there for choosing a style.
    expect(entries[0]?.figures.map(({ quantity }) => quantity)).toContain("fermenter.bitterness");
  });

  it("are not brews that cannot be poured, nor of another club", async () => {
    const { steward, brewer } = await newTastingClub();
    const id = await draftTasting(steward);
    const flightNo = await flightIn(steward, id);
    const { id: recipeId } = await createRecipe(brewer, parsedRecipe());
    const { id: equipmentId } = await createEquipment(brewer, parsedEquipment());
    const { id: planned } = await planBrew(brewer, brewOf({ recipeId, equipmentId, sharedBrewId: null }));
    const enter = async (brewId: string): Promise<void> =>
      enterBrews(steward, { ...(await seenNow(steward, id)), flightNo, brewIds: [brewId] });
    await expect(enter(planned)).rejects.toThrow("Test ale is planned; only what is in package can be poured.");
    const { organiser: stranger } = await newClub();
    await expect(enter(await packagedBrew(stranger))).rejects.toThrow("There is no such brew here.");
    const none = brewsEntered.safeParse({ id, lockVersion: 1, flightNo, brewIds: [] });
    expect(none.error?.issues[0]?.message).toBe("Brews: choose at least one");
  });

  it("are placed, judged as a style, and taken out; a test takes two", async () => {
    const { steward } = await newTastingClub();
    const id = await draftTasting(steward);
    const [scored, test] = [await flightIn(steward, id), await flightIn(steward, id, "duo-trio")];
    for (const name of ["One", "Two"]) await outsideBeer(steward, id, test, name);
    const third = await outsideBeer(steward, id, scored, "Three");
    const place = { entryNo: third, flightNo: test, styleCode: "11B" };
    await expect(placeEntry(steward, { ...(await seenNow(steward, id)), ...place })).rejects.toThrow(
      "A duo-trio test takes 2 entries, and this would make 3.",
    );
    await placeEntry(steward, { ...(await seenNow(steward, id)), ...place, flightNo: scored });
    expect((await findPreparation(steward, id))?.flights[0]?.entries).toMatchObject([{ styleCode: "11B" }]);
    await removeEntry(steward, { ...(await seenNow(steward, id)), entryNo: third });
    expect((await findPreparation(steward, id))?.flights[0]?.entries).toEqual([]);
  });
});

describe("the panel", () => {
  it("has neither the steward, nor anybody twice, nor strangers", async () => {
    const { steward, judges } = await newTastingClub();
    const id = await draftTasting(steward);
    const flightNo = await flightIn(steward, id);
    const set = async (panel: object): Promise<void> =>
      setPanel(
        steward,
        flightPanel.parse({ ...(await seenNow(steward, id)), flightNo, judges: [], pourers: [], ...panel }),
      );
    await expect(set({ judges: [steward.userId] })).rejects.toThrow("the steward knows what is in the glasses");
    const [{ userId }] = judges;
    await expect(set({ judges: [userId], pourers: [userId] })).rejects.toThrow("nobody judges a flight and pours it");
    const { organiser: stranger } = await newClub();
    await expect(set({ judges: [stranger.userId] })).rejects.toThrow("There is no such member here.");
    await set({ judges: [userId] });
    await set({ pourers: [userId] });
    expect((await findPreparation(steward, id))?.flights[0]).toMatchObject({ judges: [], pourers: [{ userId }] });
  });

  it("tells the steward alone whose own beer an entry is, and refuses whoever brewed all of them", async () => {
    const { organiser, steward, brewer, judges } = await newTastingClub();
    const id = await draftTasting(steward);
    const flightNo = await flightIn(steward, id);
    await enterBrews(steward, { ...(await seenNow(steward, id)), flightNo, brewIds: [await packagedBrew(brewer)] });
    const panel = { judges: [judges[0].userId, brewer.userId], pourers: [] };
    await setPanel(steward, { ...(await seenNow(steward, id)), flightNo, ...panel });
    await expect(openTasting(steward, await seenNow(steward, id))).rejects.toThrow(
      "Some member brewed every entry of Pale ales and cannot judge it.",
    );
    await outsideBeer(steward, id, flightNo, "Millpond porter");
    const flight = (await findPreparation(steward, id))?.flights[0];
    expect(flight?.obstacles).toEqual([]);
    expect(flight?.orders).toMatchObject({ ok: true, each: 1 });
    expect(flight?.judges.filter(({ own }) => own.length > 0).map(({ userId }) => userId)).toEqual([brewer.userId]);
    expect(JSON.stringify(await findTasting(organiser, id))).not.toContain("own");
  });

  it("gets other orders when the steward draws anew", async () => {
    const { steward, judges } = await newTastingClub();
    const id = await draftTasting(steward);
    const flightNo = await flightIn(steward, id);
    for (const name of ["One", "Two", "Three", "Four", "Five", "Six"]) await outsideBeer(steward, id, flightNo, name);
    const panel = { judges: judges.map(({ userId }) => userId), pourers: [] };
    await setPanel(steward, { ...(await seenNow(steward, id)), flightNo, ...panel });
    const orders = async (): Promise<string> =>
      JSON.stringify((await findPreparation(steward, id))?.flights[0]?.orders);
    const drawn = new Set([await orders()]);
    for (let time = 0; time < 3; time++) {
      await redrawOrders(steward, await seenNow(steward, id));
      drawn.add(await orders());
    }
    expect(drawn.size).toBeGreaterThan(2);
  });
});
