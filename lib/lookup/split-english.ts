const ASCII = /^[\x20-\x7e]*$/;
const DENIAL = /\b(?:dont|doesnt)\b/;
const REMOVAL = /\b(?:remove|removing|lose|off|away|out)\b/;
/** "bring this part out", "turn the volume down": the two halves of one verb. */
const APART =
  /\b(bring|turn|hold|pull|fade|slow|speed) (?:the |this |that |your |it |a )?(?:part |line |voice )?([a-z]+) (out|up|down|back)\b/;

/** Words, numbers and the signs people type for signs, folded; "don't" is two words. */
export function splitEnglish(text: string): string[] {
  let plain = text.toLowerCase();
  if (!ASCII.test(plain)) plain = plain.normalize("NFKD").replace(/[\p{M}]+/gu, "");
  plain = plain.replace(/[’ʼ`´]/g, "'");
  if (plain.includes("n't") || DENIAL.test(plain)) {
    plain = plain
      .replace(/\bcan't\b/g, "can not")
      .replace(/n't\b/g, " not")
      .replace(/\b(?:dont|doesnt)\b/g, "do not");
  }
  if (plain.includes("'s")) plain = plain.replace(/'s\b/g, "");
  if (REMOVAL.test(plain)) {
    plain = plain
      .replace(/\b(?:remove|removing|lose) (?:the |your |a )?([a-z]+)/g, "without $1")
      .replace(
        /\b(?:take|taking|get|keep) (?:the |your |a )?([a-z]+) (?:off|away|out)\b/g,
        "without $1",
      )
      .replace(/\b([a-z]+) off$/g, "without $1");
  }
  if (APART.test(plain)) plain = plain.replace(APART, "$1 $3 $2");
  if (plain.includes("as ")) {
    plain = plain.replace(
      /\bas ([a-z]+) as (?:possible|you can|can be|it can be|it gets|one can|able)\b/g,
      "most $1",
    );
  }
  return plain.match(/\p{L}+|\p{N}+|[=<>+%]/gu) ?? [];
}
