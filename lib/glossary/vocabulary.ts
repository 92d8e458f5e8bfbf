/**
 * The closed word lists of an entry. A program reads what a term asks from
 * these, so each value must mean one thing to a player.
 */

export const LANGUAGES = ["it", "fr", "de", "la", "en"] as const;
export type Language = (typeof LANGUAGES)[number];

export const KINDS = [
  "tempo",
  "tempo-change",
  "dynamic",
  "dynamic-change",
  "articulation",
  "character",
  "technique",
  "ornament",
  "navigation",
  "modifier",
  "form",
] as const;
export type Kind = (typeof KINDS)[number];

/** The six axes on which a marking can ask something, in the order the ribbon draws them. */
export const AXES = [
  "tempo",
  "dynamics",
  "articulation",
  "character",
  "technique",
  "road",
] as const;
export type Axis = (typeof AXES)[number];

/** Steady speeds, slowest first. */
export const PACES = [
  "very-slow",
  "slow",
  "moderately-slow",
  "moderate",
  "moderately-fast",
  "fast",
  "very-fast",
] as const;
export type Pace = (typeof PACES)[number];

/** `proportion`: the new beat is reckoned from the old (doppio movimento). `start`: the movement's first speed. */
export const TEMPO_CHANGES = [
  "slower",
  "faster",
  "return",
  "start",
  "free",
  "strict",
  "same",
  "proportion",
] as const;

export const RATES = ["gradual", "at-once", "one-note"] as const;
export const AMOUNTS = ["slight", "much"] as const;

/** Loudness levels by MusicXML element name, softest first; `n` is niente. */
export const LEVELS = [
  "n",
  "pppppp",
  "ppppp",
  "pppp",
  "ppp",
  "pp",
  "p",
  "mp",
  "mf",
  "f",
  "ff",
  "fff",
  "ffff",
  "fffff",
  "ffffff",
] as const;
export type Level = (typeof LEVELS)[number];

export const LENGTHS = ["very-short", "short", "shortened", "full", "long"] as const;
export const ATTACKS = ["soft", "firm", "accented", "hard"] as const;
export const CONNECTIONS = ["joined", "separated", "break"] as const;

export const CHARACTERS = [
  "agitated",
  "anguished",
  "bold",
  "bright",
  "broad",
  "brusque",
  "calm",
  "capricious",
  "caressing",
  "cheerful",
  "clear",
  "comfortable",
  "dark",
  "decided",
  "delicate",
  "distant",
  "dreamy",
  "dry",
  "elegant",
  "energetic",
  "expressive",
  "fading",
  "fierce",
  "fiery",
  "firm",
  "flowing",
  "free",
  "furious",
  "gentle",
  "graceful",
  "grand",
  "heavy",
  "heartfelt",
  "heroic",
  "hurried",
  "impetuous",
  "insistent",
  "intimate",
  "joyful",
  "lamenting",
  "light",
  "lively",
  "longing",
  "loving",
  "majestic",
  "marching",
  "mocking",
  "moving",
  "mournful",
  "mysterious",
  "naive",
  "noble",
  "passionate",
  "peaceful",
  "playful",
  "pleading",
  "plain",
  "powerful",
  "prayerful",
  "proud",
  "restless",
  "rhythmic",
  "rough",
  "rustic",
  "sad",
  "serious",
  "simple",
  "singing",
  "smooth",
  "soft",
  "solemn",
  "sparkling",
  "speaking",
  "spirited",
  "spoken",
  "stormy",
  "sweet",
  "tender",
  "thoughtful",
  "timid",
  "tranquil",
  "triumphant",
  "veiled",
  "vigorous",
  "virtuosic",
  "warm",
  "weary",
  "weighty",
  "wild",
] as const;
export type Character = (typeof CHARACTERS)[number];

/** Techniques of one group replace one another: arco ends pizzicato, senza sordino ends con sordino. */
export const TECHNIQUE_GROUPS = [
  "bow-or-pluck",
  "bow-place",
  "bow-stroke",
  "bow-direction",
  "mute",
  "string",
  "players",
  "octave",
  "pedal",
  "hand",
  "tongue",
  "breath",
  "voice",
  "vibrato",
  "harmonic",
  "stopping",
  "percussion",
  "fingering",
  "tuning",
  "other",
] as const;

export const ROAD_ACTIONS = [
  "repeat-from",
  "repeat-to",
  "ending",
  "to-start",
  "to-sign",
  "sign",
  "to-coda",
  "coda",
  "end",
  "go-on",
  "hold",
  "pause",
  "silence",
  "same-way",
  "place",
  "count",
  "turn-page",
  "section",
] as const;

/** What a modifier does to the term it qualifies; `link` words only join. */
export const MODIFIER_ROLES = [
  "more",
  "less",
  "much",
  "slightly",
  "rather",
  "enough",
  "not",
  "not-too-much",
  "gradually",
  "at-once",
  "always",
  "again",
  "also",
  "like",
  "almost",
  "only",
  "with",
  "without",
  "but",
  "as-much-as-possible",
  "until",
  "first",
  "second",
  "every",
  "all",
  "same",
  "link",
] as const;

export const FAMILIES = ["all", "winds", "strings", "percussion", "voice", "keyboard"] as const;

/** Where a sign stands on the page. */
export const STANDS = [
  "on-note",
  "on-stem",
  "before-note",
  "after-note",
  "between-notes",
  "above-staff",
  "below-staff",
  "in-staff",
  "at-barline",
  "at-start",
] as const;

/** What a sign looks like, for finding it without its name. */
export const SHAPES = [
  "dot",
  "line",
  "wedge",
  "hat",
  "curve",
  "zigzag",
  "wave",
  "letter",
  "number",
  "circle",
  "cross",
  "comma",
  "bracket",
  "slash",
  "note",
  "bar",
  "picture",
] as const;
