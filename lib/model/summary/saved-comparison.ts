import { z } from "zod";
import { recordId, written } from "../written";
import { comparisonQuestion, type ComparisonQuestion } from "./question";

const name = written("Name of the comparison", 120);

/** An order to keep a question under a name. The id is made by the page that asks, so that asking twice keeps it once. */
export const newComparison = z
  .strictObject({ id: recordId, name, ...comparisonQuestion.shape })
  .refine(({ from, to }) => from === null || to === null || from <= to, {
    path: ["to"],
    error: "The last day is before the first",
  });
export type NewComparison = z.output<typeof newComparison>;

const lockVersion = z.coerce.number().int().min(1);
export const comparisonRename = z.strictObject({ id: recordId, lockVersion, name });
export type ComparisonRename = z.output<typeof comparisonRename>;
export const comparisonEnd = z.strictObject({ id: recordId, lockVersion });
export type ComparisonEnd = z.output<typeof comparisonEnd>;

export interface SavedComparison {
  readonly id: string;
  readonly name: string;
  readonly question: ComparisonQuestion;
  readonly madeBy: string;
  readonly createdAt: Date;
  readonly lockVersion: number;
  /** Its maker and organisers may rename it and take it away. */
  readonly mayChange: boolean;
}
