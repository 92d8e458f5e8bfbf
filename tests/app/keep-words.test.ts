import { describe, expect, it } from "vitest";
import { importWords, listed, sizeWords, stateFileName } from "@/app/keep/keep-words";

const nothing = { answersAdded: 0, answersKnown: 0, refused: [], pieces: 0, sets: 0 };

describe("importWords", () => {
  it("says what came in and what was here", () => {
    expect(
      importWords({ ...nothing, answersAdded: 412, answersKnown: 1, pieces: 1, sets: 2 }),
    ).toEqual(["Taken in: 412 answers, one piece and 2 sets.", "One answer is here already."]);
  });

  it("says that nothing changed", () => {
    expect(importWords({ ...nothing, answersKnown: 30 })).toEqual([
      "Nothing in this file is new here; nothing has changed.",
    ]);
  });

  it("names the first answer that was left out, and counts them", () => {
    const said = importWords({
      ...nothing,
      answersAdded: 2,
      refused: ["Answer 3, at: too big.", "x"],
    });
    expect(said.at(-1)).toBe(
      "2 answers could not be read and were left out. Answer 3, at: too big.",
    );
  });
});

describe("words of the page", () => {
  it("lists, sizes and names files", () => {
    expect(listed(["a", "b", "c"])).toBe("a, b and c");
    expect(sizeWords(300)).toBe("1 KB");
    expect(sizeWords(3_400_000)).toBe("3.4 MB");
    expect(stateFileName("2027-02-06")).toBe("passagework-2027-02-06.json");
  });
});
