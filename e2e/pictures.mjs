/**
 * `npm run pictures`: the pictures of the README, from a running server
 * (BASE_URL, default http://localhost:3000), phone in light, desk in both themes.
 */
import { existsSync, mkdirSync } from "node:fs";
import { chromium } from "@playwright/test";

const BASE = process.env.BASE_URL ?? "http://localhost:3000";
const FOLDER = "public/pictures";
const SYSTEM = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
const executablePath = process.env.BROWSER_PATH ?? SYSTEM.find((path) => existsSync(path));
const SIZES = { phone: { width: 390, height: 844 }, desk: { width: 1280, height: 900 } };

mkdirSync(FOLDER, { recursive: true });
const browser = await chromium.launch({
  ...(executablePath ? { executablePath } : {}),
  args: process.getuid?.() === 0 ? ["--no-sandbox"] : [],
});
for (const [size, viewport] of Object.entries(SIZES)) {
  for (const colorScheme of ["light", "dark"]) {
    if (size === "phone" && colorScheme === "dark") continue;
    const context = await browser.newContext({ viewport, colorScheme, reducedMotion: "reduce" });
    const page = await context.newPage();
    const take = (name) =>
      page.screenshot({ path: `${FOLDER}/${name}-${size}-${colorScheme}.png` });
    await page.goto(`${BASE}/pieces`);
    await page.getByRole("button", { name: /Copper/ }).click();
    await page.waitForURL(/piece\?id=/);
    await page.getByRole("region", { name: /Ribbon/ }).waitFor();
    await page.waitForTimeout(1500);
    await take("piece");
    const id = new URL(page.url()).searchParams.get("id");
    await page.goto(`${BASE}/passage?piece=${id}`);
    await page.locator("svg g.measure").first().waitFor();
    await page.waitForTimeout(500);
    await take("passage");
    await context.close();
  }
}
await browser.close();
