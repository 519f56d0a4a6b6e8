import { expect, it } from "vitest";
import { intervals } from "@/lib/calc/ledger";
import { litres } from "@/lib/calc/units";
import { revisionIntervals } from "@/lib/server/recipes/revision-intervals";
import { garageKettle, paleAle, sameDay } from "../support/brewing-fixtures";

const ID = "0199c0de-0000-7000-8000-000000000001";

function revision(intoFermenter: number) {
  const recipe = { ...paleAle, intoFermenter: litres(intoFermenter) };
  const writtenOn = { name: "Garage", equipment: garageKettle, ambient: sameDay };
  return { id: ID, rev: 1, content: { recipe, entered: {}, style: null, notes: "", writtenOn } };
}

it("does not take a recipe of another space for the one of the same identifier", () => {
  const [here, there] = [revision(20), revision(15)];
  const of = ({ content: { recipe } }: typeof here) => intervals({ recipe, equipment: garageKettle, ambient: sameDay });
  expect(revisionIntervals({ spaceId: "here" }, here)).toEqual(of(here));
  expect(revisionIntervals({ spaceId: "there" }, there)).toEqual(of(there));
  expect(revisionIntervals({ spaceId: "here" }, here)).toEqual(of(here));
});
