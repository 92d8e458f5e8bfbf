/**
 * `npm start` and `npm test`. Plain Node, no dependency: it must run on a
 * fresh clone, before anything is installed. Each step is skipped when what it
 * rests on has not changed since it last succeeded.
 */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const ROOT = join(import.meta.dirname, "..", "..");
const STAMPS = join(ROOT, ".setup");
const BROWSERS = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
const BUILT_FROM = [
  "app",
  "content",
  "lib",
  "public",
  "next.config.ts",
  "package-lock.json",
  "tsconfig.json",
];
/** Made by the build itself, so no reason to build again. */
const MADE = new Set(["public/data", "public/pieces", "public/sw.js"]);

const [, , command, ...rest] = process.argv;
if (command === "start") start();
else if (command === "test") test();
else if (command === "build") ensureBuilt();
else fail(`run.mjs: "${command ?? ""}" is none of start, test, build.`);

function start() {
  ensureInstalled();
  ensureBuilt();
  const port = process.env.PORT ?? "3000";
  console.log(`Passagework: http://localhost:${port}`);
  run("npx", ["next", "start", "-p", port, ...rest]);
}

function test() {
  ensureInstalled();
  const steps = [
    ["types", () => run("npx", ["next", "typegen"]) || run("npx", ["tsc", "--noEmit"])],
    ["lint", () => run("npx", ["biome", "ci", "--max-diagnostics=50"])],
    ["unit", () => run("npx", ["vitest", "run"])],
    ["content", () => run("npx", ["tsx", "lib/cli/check-content.ts"])],
    ["build", () => ensureBuilt()],
    [
      "browser",
      () => ensureBrowser() || run("npx", ["playwright", "test"], { E2E_PORT: freePort() }),
    ],
  ];
  const done = [];
  for (const [name, step] of steps) {
    const from = Date.now();
    console.log(`\n== ${name}`);
    step();
    done.push(`${name} ${Math.round((Date.now() - from) / 1000)} s`);
  }
  console.log(`\nAll green: ${done.join(", ")}.`);
}

function ensureInstalled() {
  const lock = hashOf(["package-lock.json", ".npmrc"]);
  if (existsSync(join(ROOT, "node_modules")) && stamp("installed") === lock) return;
  console.log("Installing packages…");
  run("npm", ["ci", "--no-audit", "--no-fund", "--loglevel=error"]);
  keep("installed", lock);
}

function ensureBuilt() {
  const sources = hashOf(BUILT_FROM);
  if (existsSync(join(ROOT, ".next", "BUILD_ID")) && stamp("built") === sources) return;
  console.log("Building…");
  run("npx", ["tsx", "lib/cli/build-content.ts"]);
  run("npx", ["next", "build"]);
  keep("built", sources);
}

/** The system's browser, the system's package where that is to be had, else Playwright's own download. */
function ensureBrowser() {
  if (process.env.BROWSER_PATH || BROWSERS.some((path) => existsSync(path))) return;
  if (process.getuid?.() === 0 && existsSync("/usr/bin/apt-get")) {
    console.log("Installing the system's Chromium…");
    spawnSync("apt-get", ["update"], { stdio: "ignore" });
    const { status } = spawnSync("apt-get", ["install", "-y", "chromium"], { stdio: "ignore" });
    if (status === 0 && BROWSERS.some((path) => existsSync(path))) return;
  }
  run("npx", ["playwright", "install", "chromium"]);
}

/** Whatever else listens on this machine, the browser tests get a port of their own. */
function freePort() {
  const ask = `const s=require("net").createServer().listen(0,()=>{console.log(s.address().port);s.close()})`;
  return spawnSync(process.execPath, ["-e", ask], { encoding: "utf8" }).stdout.trim();
}

function run(name, args, more = {}) {
  const { status, error } = spawnSync(name, args, {
    cwd: ROOT,
    stdio: "inherit",
    shell: process.platform === "win32",
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: "1", ...more },
  });
  if (error) fail(`${name}: ${error.message}`);
  if (status !== 0) process.exit(status ?? 1);
}

function hashOf(paths) {
  const hash = createHash("sha256").update(process.version);
  const visit = (path) => {
    if (MADE.has(path) || !existsSync(join(ROOT, path))) return;
    if (!statSync(join(ROOT, path)).isDirectory()) {
      hash.update(path).update(readFileSync(join(ROOT, path)));
      return;
    }
    for (const name of readdirSync(join(ROOT, path)).sort()) visit(`${path}/${name}`);
  };
  for (const path of paths) visit(path);
  return hash.digest("hex");
}

function stamp(name) {
  const file = join(STAMPS, name);
  return existsSync(file) ? readFileSync(file, "utf8") : "";
}

function keep(name, hash) {
  mkdirSync(STAMPS, { recursive: true });
  writeFileSync(join(STAMPS, name), hash);
}

function fail(message) {
  console.error(message);
  process.exit(1);
}
