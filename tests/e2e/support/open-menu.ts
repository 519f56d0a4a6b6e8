import { expect, type Page } from "playwright/test";

/** Opens the parts of the club where they are folded away, as they are on a phone. */
export async function openMenu(page: Page): Promise<void> {
  const menu = page.getByRole("button", { name: /^Menu/ });
  if (!(await menu.isVisible())) return;
  // Until the page has its scripts, a press does nothing.
  await expect(async () => {
    if ((await menu.getAttribute("aria-expanded")) !== "true") await menu.click();
    await expect(menu).toHaveAttribute("aria-expanded", "true", { timeout: 500 });
  }).toPass();
}
