import { defineConfig } from "vitest/config";

export default defineConfig({
  resolve: { alias: { "@": import.meta.dirname } },
  test: {
    include: ["tests/**/*.test.ts"],
    exclude: ["tests/bench/**"],
    testTimeout: 30_000,
  },
});
