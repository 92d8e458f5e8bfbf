/** Goal: from a score to knowing what it asks by the date, with nothing lost. */
import { readFileSync } from "node:fs";
import { expect, type Page, test } from "@playwright/test";

const SCORE = "content/pieces/copper-weathercock.musicxml";
const TITLE = "The Copper Weathercock";

async function openScore(page: Page): Promise<void> {
  await page.goto("/pieces");
  await page.locator("input[type=file]").setInputFiles(SCORE);
  await expect(page.getByRole("heading", { level: 1, name: TITLE })).toBeVisible();
}

/** Lines of the log on this device, read straight from the browser's store. */
function logLength(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((done, failed) => {
        const opened = indexedDB.open("passagework");
        opened.onerror = () => failed(opened.error);
        opened.onsuccess = () => {
          const count = opened.result.transaction("answers").objectStore("answers").count();
          count.onsuccess = () => {
            opened.result.close();
            done(count.result);
          };
        };
      }),
  );
}

test("student: score, terms, entry, drill, passage, reload: nothing lost", async ({ page }) => {
  test.setTimeout(120_000);
  await openScore(page);

  // Every term by measure, the road of the eye drawn above.
  await expect(page.getByRole("region", { name: /Ribbon/ })).toBeVisible();
  const terms = page.getByRole("link", { name: /martellato/ }).first();
  await expect(terms).toBeVisible();

  // A date for it.
  await page.getByText("Set the audition date").click();
  await page.getByLabel("Date").fill("2099-02-06");
  await page.getByRole("button", { name: "Set the date" }).click();
  await expect(page.getByText(/Kept: 6 February/)).toBeVisible();

  // An entry, and the way back to the measures of the piece.
  await terms.click();
  await expect(page.getByRole("heading", { level: 1 })).toContainText("martellato");
  const inPieces = page.getByRole("region", { name: "In your pieces" });
  await expect(inPieces.getByRole("link", { name: new RegExp(TITLE) })).toBeVisible();
  await inPieces.getByRole("link", { name: new RegExp(TITLE) }).click();

  // It opens the measure where the word stands: what is in force there, and why.
  const sheet = page.getByRole("dialog");
  await expect(sheet).toContainText("martellato");
  await page.keyboard.press("Escape");
  await expect(sheet).toBeHidden();

  // Drill: answer by keyboard until eight answers are kept.
  await page.getByRole("link", { name: "Drill this piece" }).click();
  for (let answered = 1; answered <= 8; answered += 1) {
    const field = page.getByRole("main").getByRole("textbox");
    const goOn = page.getByRole("button", { name: "Go on" });
    await expect(page.getByRole("button", { name: "Show me" })).toBeVisible();
    if (await field.count()) {
      await field.fill("dolce");
      await page.keyboard.press("Enter");
    } else {
      await page.keyboard.press("a");
    }
    await expect(goOn).toBeVisible();
    await goOn.click();
    await expect.poll(() => logLength(page)).toBe(answered);
  }

  // Passage: engraved, asked, marked axis by axis.
  await page.goto("/passage");
  await expect(
    page.getByRole("heading", { name: "What does this passage ask for?" }),
  ).toBeVisible();
  await expect(page.locator("svg g.measure").first()).toBeAttached({ timeout: 60_000 });
  for (const group of await page.getByRole("group").all()) {
    const radio = group.getByRole("radio").first();
    if (await radio.count()) await radio.check();
  }
  const measures = page.getByRole("group").getByRole("button", { pressed: false });
  if (await measures.count()) await measures.first().click();
  await page.getByRole("button", { name: "Mark my answers" }).click();
  await expect(page.getByRole("heading", { name: "Axis by axis" })).toBeVisible();
  await expect.poll(() => logLength(page)).toBeGreaterThan(8);
  const kept = await logLength(page);

  // Close the lid, open it again.
  await page.reload();
  expect(await logLength(page)).toBe(kept);
  await page.goto("/");
  await expect(page.getByText(/6 February/).first()).toBeVisible();
  await expect(page.getByRole("link", { name: new RegExp(TITLE) }).first()).toBeVisible();
});

test("student: everything goes out as one file and into another device", async ({
  page,
  browser,
}) => {
  test.setTimeout(120_000);
  await openScore(page);
  await page.getByRole("link", { name: "Drill this piece" }).click();
  await page.getByRole("button", { name: "Show me" }).click();
  await expect.poll(() => logLength(page)).toBe(1);
  await page.goto("/keep");
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save everything to a file" }).click(),
  ]);
  const file = await download.path();
  expect(JSON.parse(readFileSync(file, "utf8")).answers).toHaveLength(1);

  const other = await (await browser.newContext()).newPage();
  await other.goto("/keep");
  await other.locator("input[type=file]").setInputFiles(file);
  // The report comes when all is taken in.
  await expect(other.getByText(/^Taken in:/)).toBeVisible();
  await expect.poll(() => logLength(other)).toBe(1);
  await other.goto("/pieces");
  await expect(other.getByRole("link", { name: new RegExp(TITLE) })).toBeVisible();
  await other.context().close();
});

for (const [name, content, says] of [
  ["cut.musicxml", "<score-partwise><part", /cut\.musicxml/],
  [
    "picture.musicxml",
    "<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>",
    /picture\.musicxml/,
  ],
  ["photo.pdf", "%PDF-1.7 nothing", /looks like a PDF/],
] as const) {
  test(`student: ${name} is refused in one sentence, nothing else changes`, async ({ page }) => {
    await page.goto("/pieces");
    await page
      .locator("input[type=file]")
      .setInputFiles({ name, mimeType: "application/octet-stream", buffer: Buffer.from(content) });
    await expect(page.getByRole("main").getByRole("alert")).toContainText(says);
    await expect(page).toHaveURL(/\/pieces$/);
    await expect(page.getByText("No piece yet.")).toBeVisible();
  });
}

test("student: markup in a score is shown as text, never run", async ({ page }) => {
  let ran = false;
  page.on("dialog", (dialog) => {
    ran = true;
    void dialog.dismiss();
  });
  const xml = readFileSync(SCORE, "utf8").replace(
    /<work-title>[^<]*<\/work-title>/,
    "<work-title>&lt;img src=x onerror=alert(1)&gt; Weir</work-title>",
  );
  await page.goto("/pieces");
  await page
    .locator("input[type=file]")
    .setInputFiles({ name: "weir.musicxml", mimeType: "text/xml", buffer: Buffer.from(xml) });
  await expect(page.getByRole("heading", { level: 1 })).toContainText("<img src=x");
  expect(ran).toBe(false);
});
