/** Each screen, light and dark: nothing for axe, no overflow, nothing asked of another host. */
import AxeBuilder from "@axe-core/playwright";
import { expect, test } from "@playwright/test";

const PATHS = [
  "/",
  "/terms",
  "/terms/martellato",
  "/terms/fermata",
  "/sources",
  "/pieces",
  "/drill",
  "/passage",
  "/keep",
  "/nowhere",
];

for (const colorScheme of ["light", "dark"] as const) {
  test.describe(colorScheme, () => {
    test.use({ colorScheme });
    for (const path of PATHS) {
      test(`${path}: accessible, own host only`, async ({ page, baseURL }) => {
        const foreign: string[] = [];
        page.on("request", (request) => {
          if (!request.url().startsWith(baseURL ?? "") && /^https?:/.test(request.url())) {
            foreign.push(request.url());
          }
        });
        await page.goto(path);
        await page.waitForLoadState("networkidle");
        const { violations } = await new AxeBuilder({ page })
          .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"])
          .analyze();
        expect(violations.map((v) => `${v.id}: ${v.nodes[0]?.html}`)).toEqual([]);
        expect(foreign).toEqual([]);
      });
    }
  });
}

for (const width of [320, 390, 768, 1280, 1440]) {
  test(`no page scrolls sideways at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 844 });
    for (const path of PATHS) {
      await page.goto(path);
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(over, path).toBeLessThanOrEqual(0);
    }
  });
}
