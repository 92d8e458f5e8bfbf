/** Source: ../shared/reference/memory/trade-facts.json (arithmetic derived there; bands common practice). */
import { describe, expect, it } from "vitest";
import { beatsPerMinute, notesPerSecond, quartersPerMinute } from "../../lib/reading/sums";
import { hasShared, sharedText } from "./shared";

const FILE = "reference/memory/trade-facts.json";
const facts = hasShared(FILE) ? JSON.parse(sharedText(FILE)) : null;

describe("tempo sums › trade facts", () => {
  it("notes a second", () => {
    for (const { bpm, notesPerBeat, nps } of facts?.tonguing.checks ?? []) {
      expect(notesPerSecond(bpm, notesPerBeat)).toBeCloseTo(nps, 3);
    }
  });
  it("beat units to quarters a minute and back", () => {
    for (const { beat, bpm, quarterTempo } of facts?.tempo.checks ?? []) {
      const unit = {
        unit: String(beat).replace("dotted ", ""),
        dots: String(beat).startsWith("dotted") ? 1 : 0,
      };
      expect(quartersPerMinute(bpm, unit)).toBeCloseTo(quarterTempo, 6);
      expect(beatsPerMinute(quarterTempo, unit)).toBeCloseTo(bpm, 6);
    }
  });
});
