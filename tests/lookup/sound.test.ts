/** IPA: the entries' own, after the sources they cite; their respellings were written apart from it. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fold } from "../../lib/glossary/fold";
import { codeOf, soundDistance, soundLikeness } from "../../lib/lookup/sound-distance";
import { skeleton, soundOfEnglish, soundOfIpa, soundOfWord } from "../../lib/lookup/sound-key";
import { glossary } from "../reading/read-file";

const like = (a: string, b: string) => soundLikeness(codeOf(a), codeOf(b));

describe("soundOfIpa", () => {
  it("is rough on purpose: stress, length and doubling are not heard", () => {
    expect(soundOfIpa("ˈdolt͡ʃe")).toBe("dolCe");
    expect(soundOfIpa("ˈseɲɲo")).toBe("senyo");
    expect(soundOfIpa("ˈʃnɛl")).toBe("Snel");
    expect(soundOfIpa("seˈde")).toBe("sede");
    expect(soundOfIpa("ɡʁɑ̃")).toBe("gran");
  });
});

describe("soundOfEnglish", () => {
  it("reads what English ears write down", () => {
    expect(soundOfEnglish("dolchay")).toBe("dolCe");
    expect(soundOfEnglish("sordeeno")).toBe("sordino");
    expect(soundOfEnglish("toojour")).toBe("tuJur");
    expect(soundOfEnglish("feenay")).toBe("fine");
  });
  it("comes near the IPA of nearly every entry from its respelling", () => {
    const likeness = glossary.entries.flatMap(({ ipa, say }) => {
      if (!ipa || !say) return [];
      const words = fold((say.split(/[,(]/)[0] ?? "").replaceAll("-", "")).split(" ");
      return [like(soundOfIpa(ipa), words.map(soundOfEnglish).join(""))];
    });
    const mean = likeness.reduce((sum, x) => sum + x, 0) / likeness.length;
    console.log(`respelling and IPA: ${likeness.length} entries, mean likeness ${mean.toFixed(3)}`);
    expect(likeness.length).toBeGreaterThan(800);
    expect(mean).toBeGreaterThan(0.96);
  });
});

it("soundOfWord › speaks Italian by rule", () => {
  expect(soundOfWord("dolce", "it")).toBe("dolCe");
  expect(soundOfWord("giocoso", "it")).toBe("Jokoso");
  expect(soundOfWord("scherzando", "it")).toBe("skerzando");
  expect(soundOfWord("segno", "it")).toBe("senyo");
});

it("skeleton › keeps the consonants by kind", () => {
  expect(skeleton("dolCe")).toBe("tls");
  expect(skeleton("graziozo")).toBe(skeleton("gratioso").replace("t", ""));
});

describe("soundDistance", () => {
  it("forgives what is easily misheard", () => {
    expect(like("kreSendo", "kreCendo")).toBeGreaterThan(0.9);
    expect(like("sede", "sedez")).toBeGreaterThan(0.8);
    expect(like("dolCe", "presto")).toBeLessThan(0.4);
  });
  it("is a distance (property)", () => {
    const sound = fc.string({ unit: fc.constantFrom(..."aeioptkgsSCJzlrmny"), maxLength: 12 });
    fc.assert(
      fc.property(sound, sound, (a, b) => {
        const [x, y] = [codeOf(a), codeOf(b)];
        expect(soundDistance(x, x)).toBe(0);
        expect(soundDistance(x, y)).toBeCloseTo(soundDistance(y, x), 6);
        expect(soundDistance(x, y) === 0).toBe(a === b);
      }),
    );
  });
});
