import { readRecipePage } from "../read-recipe";

interface BarePageProps {
  readonly params: Promise<{ readonly space: string; readonly recipe: string }>;
}

/** What the page of a recipe reads, and hardly a word: the page of a benchmark, which no other build has. */
export default async function BarePage({ params }: BarePageProps) {
  const { space, recipe } = await params;
  const read = await readRecipePage(space, recipe);
  return <h1>{read.recipe.title}</h1>;
}
