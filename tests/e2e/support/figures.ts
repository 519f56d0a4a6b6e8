import type { Locator, Page } from "playwright/test";

/** The number that a place of the page shows first, whatever its unit: "1.051 SG ± 0.003" is 1.051. */
export async function numberIn(place: Locator): Promise<number> {
  // Columns that line up at the decimal mark set the two parts apart.
  const text = (await place.innerText()).replaceAll(/\s+(?=\.\d)/g, "");
  const [, figure] = /([-−+]?\d+(?:\.\d+)?)/.exec(text) ?? [];
  if (figure === undefined) throw new Error(`no number in “${text}”`);
  return Number(figure.replace("−", "-"));
}

/** The beer's own numbers, as the recipe shows them over its rows. */
export async function beerFigures(
  page: Page,
): Promise<{ readonly gravity: number; readonly bitterness: number; readonly colour: number }> {
  const beer = page.getByRole("region", { name: "The beer" });
  const figure = (label: string): Promise<number> => numberIn(beer.getByLabel(label, { exact: true }));
  return {
    gravity: await figure("Original gravity"),
    bitterness: await figure("Bitterness"),
    colour: await figure("Colour"),
  };
}
