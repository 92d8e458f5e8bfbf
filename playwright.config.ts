import { existsSync } from "node:fs";
import { defineConfig } from "@playwright/test";

const PORT = process.env.E2E_PORT ?? "4173";
const SYSTEM = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
const executablePath = process.env.BROWSER_PATH ?? SYSTEM.find((path) => existsSync(path));

export default defineConfig({
  testDir: "e2e",
  outputDir: "test-results",
  timeout: 90_000,
  // Two slow cores share the work: what is right may take a while to come.
  expect: { timeout: 20_000 },
  workers: 2,
  reporter: [["list"]],
  use: {
    baseURL: `http://localhost:${PORT}`,
    viewport: { width: 390, height: 844 },
    launchOptions: {
      ...(executablePath ? { executablePath } : {}),
      args: [
        ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
        "--disable-background-networking",
        "--disable-component-update",
        "--autoplay-policy=no-user-gesture-required",
      ],
    },
  },
  webServer: {
    command: `npx next start -p ${PORT}`,
    url: `http://localhost:${PORT}`,
    reuseExistingServer: !process.env.CI,
    timeout: 60_000,
  },
});
