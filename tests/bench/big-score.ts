/** A MusicXML score of about the asked size, the same every time: plain measures with the usual marks. */
export function bigScore(megabytes: number): string {
  const head = `<?xml version="1.0" encoding="UTF-8"?>\n<score-partwise version="4.0">\n  <part-list>\n    <score-part id="P1"><part-name>Clarinet</part-name></score-part>\n  </part-list>\n  <part id="P1">\n`;
  const parts = [head];
  let size = head.length;
  for (let n = 1; size < megabytes * 1_000_000; n += 1) {
    const measure = measureXml(n);
    parts.push(measure);
    size += measure.length;
  }
  parts.push("  </part>\n</score-partwise>\n");
  return parts.join("");
}

const WORDS = [
  "dolce",
  "cresc. poco a poco",
  "rit.",
  "a tempo",
  "con fuoco",
  "espress.",
  "Più mosso",
];
const LEVELS = ["p", "mf", "f", "pp"];
const STEPS = ["C", "D", "E", "F", "G", "A", "B"];

function measureXml(n: number): string {
  const attributes =
    n === 1
      ? `      <attributes>\n        <divisions>4</divisions>\n        <key><fifths>0</fifths></key>\n        <time><beats>4</beats><beat-type>4</beat-type></time>\n      </attributes>\n`
      : "";
  const words =
    n % 4 === 1
      ? `      <direction placement="above">\n        <direction-type><words font-style="italic">${WORDS[n % WORDS.length]}</words></direction-type>\n      </direction>\n`
      : "";
  const level =
    n % 4 === 3
      ? `      <direction placement="below">\n        <direction-type><dynamics><${LEVELS[n % LEVELS.length]}/></dynamics></direction-type>\n      </direction>\n`
      : "";
  const notes = Array.from({ length: 8 }, (_, i) => noteXml(n, i)).join("");
  return `    <measure number="${n}">\n${attributes}${words}${level}${notes}    </measure>\n`;
}

function noteXml(n: number, i: number): string {
  const mark =
    i % 4 === 0
      ? `        <notations>\n          <articulations>\n            <${i === 0 ? "accent" : "staccato"}/>\n          </articulations>\n        </notations>\n`
      : "";
  return `      <note>\n        <pitch>\n          <step>${STEPS[(n + i) % 7]}</step>\n          <octave>5</octave>\n        </pitch>\n        <duration>2</duration>\n        <voice>1</voice>\n        <type>eighth</type>\n        <stem>down</stem>\n${mark}      </note>\n`;
}
