import { SaxesParser } from "saxes";
import { decodeChunks, type TextSource } from "../decode-text";
import { scoreProblem } from "../limits";

/** Characters looked at in one go. */
const STEP = 2048;

/**
 * Name of the outermost element without prefix, reading no further than its start tag.
 * Returns "" when the text ends or breaks before one is seen; the full reading
 * then reports what is wrong.
 */
export function findRoot(source: TextSource): string {
  const parser = new SaxesParser({ position: false });
  let root = "";
  let broken = false;
  parser.on("opentagstart", (tag) => {
    if (root === "") root = tag.name.slice(tag.name.indexOf(":") + 1);
  });
  parser.on("error", () => {
    broken = true;
  });
  for (const text of decodeChunks(source)) {
    for (let at = 0; at < text.length && root === "" && !broken; at += STEP) {
      parser.write(text.slice(at, at + STEP));
    }
    if (root !== "" || broken) break;
  }
  return root;
}

/** Words for a root element that is not a score. */
export function refuseRoot(root: string, file: string): never {
  if (root === "opus" || root === "meiCorpus") {
    throw scoreProblem(file, "unknown-root", {
      found: `the file is a list of scores (<${root}>), not a score`,
      expected: "one score",
      remedy: "Open one of the scores it lists.",
    });
  }
  const looks = root === "svg" ? "an SVG picture" : root === "html" ? "a web page" : "other XML";
  throw scoreProblem(file, "not-music", {
    found: `it looks like ${looks} (<${root.slice(0, 40)}>), not a score`,
    expected: "MusicXML (score-partwise or score-timewise) or MEI (mei)",
    remedy: "Export the piece as MusicXML and open that file.",
  });
}
