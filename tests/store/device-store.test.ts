import "fake-indexeddb/auto";
import { describe, expect, it } from "vitest";
import type { Answer } from "../../lib/memory/answer";
import { openDeviceStore } from "../../lib/store/device-store";
import { StoreError } from "../../lib/store/records";
import { exportState, importState } from "../../lib/store/whole-state";
import { readXml } from "../reading/read-file";

const answer = (id: string, at: number): Answer => ({
  id,
  at,
  offset: 60,
  entry: "dolce",
  prompt: "word>meaning",
  outcome: "right",
  ms: 2100,
  help: false,
  options: 4,
});
const reading = readXml(
  `<score-partwise version="4.0"><part-list><score-part id="P1"><part-name>Flute</part-name></score-part></part-list><part id="P1"><measure number="1"><attributes><divisions>1</divisions></attributes><direction><direction-type><words>dolce</words></direction-type></direction><note><rest/><duration>4</duration></note></measure></part></score-partwise>`,
);
const piece = {
  id: "piece-1",
  title: "Weir Song",
  fileName: "weir.musicxml",
  bytes: new Uint8Array([1, 2, 250]),
  reading,
  partIndex: 0,
  addedAt: 5,
  changedAt: 5,
};
const set = {
  id: "set-1",
  title: "Weir Song",
  slugs: ["dolce"],
  pieceId: "piece-1",
  date: "2027-02-06",
  minutesADay: 6,
  changedAt: 5,
};

describe("openDeviceStore", () => {
  it("keeps the log through a reopening, in order, and never rewrites a line", async () => {
    const first = await openDeviceStore("keeps");
    expect(await first.addAnswers([answer("b", 20), answer("a", 10)])).toBe(2);
    expect(await first.addAnswers([{ ...answer("a", 10), outcome: "missed" }])).toBe(0);
    first.close();
    const again = await openDeviceStore("keeps");
    expect(await again.answers()).toEqual([answer("a", 10), answer("b", 20)]);
    again.close();
  });
});

describe("exportState and importState", () => {
  it("carries everything to another device, and a second time changes nothing", async () => {
    const one = await openDeviceStore("one");
    await one.addAnswers([answer("a", 10)]);
    await one.putPiece(piece);
    await one.putSet(set);
    await one.putSetting("minutes", 6);
    const two = await openDeviceStore("two");
    await two.addAnswers([answer("z", 99)]);
    const text = await exportState(one);
    expect(await importState(two, text)).toMatchObject({ answersAdded: 1, pieces: 1, sets: 1 });
    expect(await importState(two, text)).toMatchObject({
      answersAdded: 0,
      answersKnown: 1,
      pieces: 0,
      sets: 0,
    });
    expect((await two.answers()).map((a) => a.id)).toEqual(["a", "z"]);
    expect(await two.pieces()).toEqual([piece]);
    expect(await two.sets()).toEqual([set]);
    expect(await two.setting("minutes")).toBe(6);
  });
  it.each([
    ["nonsense", "not JSON"],
    ["{}", "not saved by this site"],
    [
      '{"format":"passagework-state","version":9,"answers":[],"pieces":[],"sets":[],"settings":{}}',
      "newer version",
    ],
  ])("refuses %s in one sentence and changes nothing", async (text, says) => {
    const store = await openDeviceStore("refuses");
    await expect(importState(store, text)).rejects.toThrow(says);
    await expect(importState(store, text)).rejects.toBeInstanceOf(StoreError);
    expect(await store.answers()).toEqual([]);
  });
});
