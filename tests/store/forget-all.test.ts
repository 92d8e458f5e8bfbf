import "fake-indexeddb/auto";
import { openDB } from "idb";
import { describe, expect, it } from "vitest";
import { openDeviceStore } from "../../lib/store/device-store";
import { forgetAll } from "../../lib/store/forget-all";
import { StoreError } from "../../lib/store/records";

const answer = {
  id: "a1",
  at: 1,
  offset: 0,
  entry: "dolce",
  prompt: "word>meaning",
  outcome: "right",
  ms: 2000,
  help: false,
} as const;

describe("forgetAll", () => {
  it("leaves nothing, also where another tab holds the store open", async () => {
    const mine = await openDeviceStore("forget");
    // The other tab's store lets go of itself when a change of version is announced.
    await openDeviceStore("forget");
    await mine.addAnswers([answer]);
    await mine.putSetting("look", "dark");
    await forgetAll(mine, "forget");
    const fresh = await openDeviceStore("forget");
    expect(await fresh.answers()).toEqual([]);
    expect(await fresh.settings()).toEqual({});
    fresh.close();
  });

  it("says so when another tab does not let go", async () => {
    const mine = await openDeviceStore("held");
    const held = await openDB("held");
    await expect(forgetAll(mine, "held")).rejects.toThrow(StoreError);
    held.close();
  });
});
