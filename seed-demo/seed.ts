import { randomUUID } from "node:crypto";
import { DAY_MS } from "@/lib/model/plain-day";
import { createEquipment } from "@/lib/server/equipment/writes";
import { createIngredient } from "@/lib/server/ingredients/writes";
import { createLot } from "@/lib/server/lots/writes";
import { publishResult } from "@/lib/server/publications/publish-result";
import { publishRecipe } from "@/lib/server/publications/writes";
import { createRecipe } from "@/lib/server/recipes/writes";
import { seedBrew, type DemoBrew } from "./brews";
import { asMember, seedPeople } from "./club";
import { seedFermentation } from "./fermentations";
import { DEMO_INGREDIENTS, demoLots } from "./ingredients";
import { DEMO_KETTLES, type DemoKettle } from "./kettles";
import { Noise } from "./noise";
import { seedOrders } from "./orders";
import { DEMO_CLUB, DEMO_OUTSIDER, DEMO_PASSWORD, DEMO_PEOPLE, type DemoPerson } from "./people";
import { DEMO_RECIPES, type DemoRecipe } from "./recipes";
import { callDemoBrew, changeDemoPlan, DEMO_HARD_WATER, joinDemoBrew, keepDemoComparison } from "./shared-brew";
import { seedTastings } from "./tastings";
import { seedTrial } from "./trial";

const HOUR_MS = 3_600_000;
const SEED = 1_812_433;
/** Fermentations have noise of their own, so that the brew days stay what they were. */
const FERMENTATION_SEED = 733_001;

const SIGN_IN_KEYS: readonly string[] = ["organiser", "member", "judge"];

/** Printed at the start; everything about them is invented. */
export const DEMO_SIGN_INS = DEMO_PEOPLE.filter((person) => SIGN_IN_KEYS.includes(person.key)).map(
  ({ name, role, email }) => ({ name, role, email, password: DEMO_PASSWORD }),
);

/** Everybody whom the demo makes. */
export const DEMO_EMAILS: readonly string[] = [...DEMO_PEOPLE, DEMO_OUTSIDER].map(({ email }) => email);

interface Kept<Thing> {
  readonly id: string;
  readonly thing: Thing;
}

/**
 * Fills an empty database with the invented demo club: thirteen people, twelve kettles, four recipes, and a shared brew
 * with five complete logs (one with a reading that is deliberately wrong) and one brew in progress; two more ferment;
 * another shared brew is only called, and the club orders for it. The porter's recipe and the figures of the shared brew are
 * published. The shared brew was tasted and revealed, and another tasting is open.
 */
export async function seedDemoClub(): Promise<void> {
  await seedPeople();
  const kettles: Kept<DemoKettle>[] = [];
  for (const kettle of DEMO_KETTLES) {
    const { id } = await as(kettle.owner, (member) => createEquipment(member, { equipment: kettle.equipment }));
    kettles.push({ id, thing: kettle });
  }
  const recipes: Kept<DemoRecipe>[] = [];
  for (const recipe of DEMO_RECIPES) recipes.push({ id: await seedRecipe(recipe), thing: recipe });
  await seedPublication(recipes);
  await seedIngredients();
  const sharedBrewId = await seedBrews(kettles, recipes);
  await seedTastings({ as, sharedBrewId });
  const { id: equipmentId, thing: pot } = requireKept(kettles, ({ equipment }) => equipment.name === "Test pot");
  await as(pot.owner, (member) => seedTrial(member, { ...pot, equipmentId, noise: new Noise(SEED) }));
  await seedOrders({
    as,
    recipeId: requireKept(recipes, (recipe) => recipe.key === "porter").id,
    kettles: kettles.map(({ id, thing }) => ({ id, owner: thing.owner })),
  });
}

/** One recipe that everybody may read. */
async function seedPublication(recipes: readonly Kept<DemoRecipe>[]): Promise<void> {
  const porter = recipes.find(({ thing }) => thing.key === "porter");
  if (porter === undefined) throw new Error("the demo club has no porter");
  await as("organiser", (member) => publishRecipe(member, { recipeId: porter.id, rev: 1, named: false }));
}

async function seedIngredients(): Promise<void> {
  for (const { by, ingredient } of DEMO_INGREDIENTS) await as(by, (member) => createIngredient(member, ingredient));
  for (const { by, lot } of demoLots(new Date())) await as(by, (member) => createLot(member, lot));
}

function as<Result>(key: string, act: Parameters<typeof asMember<Result>>[2]): Promise<Result> {
  return asMember(personOf(key).email, DEMO_CLUB.slug, act);
}

function personOf(key: string): DemoPerson {
  const found = DEMO_PEOPLE.find((person) => person.key === key);
  if (found === undefined) throw new Error(`nobody in the demo club is called ${key}`);
  return found;
}

/** All recipes are written for the first kettle of the list, the organiser's. */
function homeKettle(): DemoKettle {
  const [home] = DEMO_KETTLES;
  if (home === undefined) throw new Error("the demo club has no kettle");
  return home;
}

async function seedRecipe({ author, title, style, notes, recipe }: DemoRecipe): Promise<string> {
  const { equipment, ambient } = homeKettle();
  const content = { recipe, entered: {}, style, notes, writtenOn: { name: equipment.name, equipment, ambient } };
  return (await as(author, (member) => createRecipe(member, { title, content, message: "First revision" }))).id;
}

async function seedBrews(kettles: readonly Kept<DemoKettle>[], recipes: readonly Kept<DemoRecipe>[]): Promise<string> {
  const noise = new Noise(SEED);
  const now = Date.now();
  const paleAle = requireKept(recipes, (recipe) => recipe.key === "pale ale");
  const porter = requireKept(recipes, (recipe) => recipe.key === "porter");
  const lager = requireKept(recipes, (recipe) => recipe.key === "lager");
  const sharedBrewId = await as("organiser", (member) => callDemoBrew(member, paleAle.id));
  let fermentations = 0;
  const brewOf = (recipe: Kept<DemoRecipe>, kettleName: string, rest: Partial<DemoBrew>): Promise<void> => {
    const kettle = requireKept(kettles, ({ equipment }) => equipment.name === kettleName);
    const seed = FERMENTATION_SEED + (fermentations += 1);
    return as(kettle.thing.owner, async (member) => {
      const id = await seedBrew(member, {
        recipeId: recipe.id,
        sharedBrewId: null,
        equipmentId: kettle.id,
        kettle: kettle.thing,
        written: { recipe: recipe.thing.recipe, kettle: homeKettle() },
        state: "planned",
        startedAt: new Date(now),
        noise,
        ...rest,
      });
      await seedFermentation(member, id, seed);
    });
  };
  const ago = (days: number): Date => new Date(now - days * DAY_MS);
  await brewOf(paleAle, "Cellar thirty-five", { sharedBrewId, state: "closed", startedAt: ago(44) });
  await brewOf(paleAle, "Shed fifty", { sharedBrewId, state: "closed", startedAt: ago(43) });
  // A sample that was still warm: the hydrometer floats too deep, and nobody noticed.
  const wrong = { quantity: "kettle.preBoilGravity", by: -2.6 } as const;
  await brewOf(paleAle, "Blue barrel", { sharedBrewId, state: "in package", startedAt: ago(41), wrong });
  await brewOf(paleAle, "Plateau thirty", { sharedBrewId, state: "in package", startedAt: ago(38) });
  await brewOf(paleAle, "Harbour sixty-five", { sharedBrewId, state: "closed", startedAt: ago(37) });
  await brewOf(paleAle, "Coach-house seventy", {
    sharedBrewId,
    state: "on the kettle",
    startedAt: new Date(now - 2.5 * HOUR_MS),
  });
  await brewOf(porter, "Shed fifty", {});
  // Two that ferment now, with invented readings: one whose dry hops are due, and a cool one.
  await brewOf(paleAle, "Shed fifty", { state: "in the fermenter", startedAt: ago(5.2) });
  await brewOf(lager, "Shed fifty", { state: "in the fermenter", startedAt: ago(6.4) });
  await seedParticipants(kettles, sharedBrewId);
  await as("member", keepDemoComparison);
  await as("organiser", (member) => publishResult(member, { id: randomUUID(), sharedBrewId }));
  return sharedBrewId;
}

/** Mads has seen the first version of the plan only; Emrys and Petra joined under the second, with days to come. */
async function seedParticipants(kettles: readonly Kept<DemoKettle>[], sharedBrewId: string): Promise<void> {
  const enter = (name: string, rest: { readonly ahead?: number; readonly water?: object }): Promise<void> => {
    const { id: equipmentId, thing } = requireKept(kettles, ({ equipment }) => equipment.name === name);
    return as(thing.owner, (member) => joinDemoBrew(member, { sharedBrewId, equipmentId, ...rest }));
  };
  await enter("Test pot", {});
  await as("organiser", (member) => changeDemoPlan(member, sharedBrewId));
  await enter("Old boiler", { ahead: 9 });
  await enter("Barn hundred", { ahead: 16, water: DEMO_HARD_WATER });
}

function requireKept<Thing>(all: readonly Kept<Thing>[], is: (thing: Thing) => boolean): Kept<Thing> {
  const found = all.find(({ thing }) => is(thing));
  if (found === undefined) throw new Error("the demo refers to something that it does not have");
  return found;
}
