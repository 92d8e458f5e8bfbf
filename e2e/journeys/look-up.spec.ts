/** Goal: know what to do with the next note within five seconds, instrument in hand. */
import { expect, test } from "@playwright/test";

test("look-up: the field has the focus, typing finds, Enter opens the entry", async ({ page }) => {
  await page.goto("/");
  const field = page.getByRole("searchbox", { name: "Look up a word or sign" });
  await expect(field).toBeFocused();
  await page.keyboard.type("mart");
  const first = page
    .getByRole("list", { name: /Found for/ })
    .getByRole("link")
    .first();
  await expect(first).toContainText("martellato");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("heading", { level: 1 })).toContainText("martellato");
  await expect(page.getByText("how notes are touched", { exact: false }).first()).toBeVisible();
});

for (const [typed, wanted] of [
  ["rall.", "rallentando"],
  ["stacatto", "staccato"],
  ["get louder bit by bit", "crescendo"],
  ["dot over a note", "staccato"],
] as const) {
  test(`look-up: "${typed}" leads to ${wanted}`, async ({ page }) => {
    await page.goto("/");
    await page.getByRole("searchbox").first().fill(typed);
    await expect(page.getByRole("list", { name: /Found for/ })).toContainText(wanted);
  });
}

test("look-up: arrows reach the results, Escape clears", async ({ page }) => {
  await page.goto("/");
  await page.keyboard.type("dolce");
  await expect(page.getByRole("list", { name: /Found for/ })).toBeVisible();
  await page.keyboard.press("ArrowDown");
  await expect(
    page
      .getByRole("list", { name: /Found for/ })
      .getByRole("link")
      .first(),
  ).toBeFocused();
  await page.keyboard.press("Escape");
  await expect(page.getByRole("searchbox").first()).toHaveValue("");
});

test("look-up: nothing found says what to try", async ({ page }) => {
  await page.goto("/");
  await page.getByRole("searchbox").first().fill("xqzwv");
  await expect(page.getByText("Nothing is found for", { exact: false })).toBeVisible();
});

test("look-up: an Italian term carries its language, an entry its sources", async ({ page }) => {
  await page.goto("/terms/morbido");
  await expect(page.locator("h1 [lang=it], h1[lang=it]").first()).toHaveText("morbido");
  await expect(page.getByText("Where this comes from", { exact: false })).toBeVisible();
});
