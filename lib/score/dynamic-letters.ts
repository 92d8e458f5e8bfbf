/** Letters of MusicXML 4.0 `dynamics`, besides `n` and `other-dynamics`. */
export const DYNAMIC_LETTERS: readonly string[] =
  "p pp ppp pppp ppppp pppppp f ff fff ffff fffff ffffff mp mf sf sfp sfpp fp rf rfz sfz sffz fz pf sfzp".split(
    " ",
  );
