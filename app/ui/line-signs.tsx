/**
 * Signs that are no glyph but are drawn to measure: curves, brackets, lines,
 * words in a box. One drawing a slug; each lies on the staff of sign-on-staff.
 */
import type { ReactNode } from "react";
import {
  Barline,
  BOTTOM,
  Bracket,
  Note,
  Placed,
  Slur,
  StaffLines,
  TOP,
  Words,
} from "./staff-parts";

export interface LineSign {
  /** What stands on the page beside it, in soft ink. */
  around: ReactNode;
  /** The sign itself. */
  sign: ReactNode;
}

const WIDTH = 160;
const lines = <StaffLines to={WIDTH} />;

const threeNotes = (
  <>
    {lines}
    <Note x={30} y={55} />
    <Note x={72} y={50} />
    <Note x={114} y={55} />
  </>
);

const twoBars = (
  <>
    {lines}
    <Barline x={24} />
    <Note x={48} y={65} stem="up" />
    <Note x={98} y={60} stem="up" />
    <Barline x={142} />
  </>
);

function ending(text: string): LineSign {
  return {
    around: twoBars,
    sign: (
      <>
        <Bracket from={24} to={142} y={14} hook={16} />
        <Words x={30} y={29} bold>
          {text}
        </Words>
      </>
    ),
  };
}

/** Beamed notes under a bracket with their number, as many as the sign names. */
function tuplet(count: number): LineSign {
  const step = 112 / count;
  const heads = Array.from({ length: count }, (_, i) => 20 + i * step);
  const first = heads[0] ?? 20;
  const last = heads.at(-1) ?? 132;
  const right = last + 11.2;
  const gap = (first + right) / 2 + 5;
  return {
    around: (
      <>
        {lines}
        {heads.map((x) => (
          <Note key={x} x={x} y={75} stem="up" />
        ))}
        <path d={`M${first + 10.6} 38H${right}v5H${first + 10.6}z`} fill="currentColor" />
      </>
    ),
    sign: (
      <>
        <path
          d={`M${first + 8} 26v-8H${gap - 10}M${gap + 10} 18H${right + 3}v8`}
          fill="none"
          stroke="currentColor"
          strokeWidth="1.6"
        />
        <Placed name={`tuplet${count}`} x={gap} y={18} />
        {count === 3 ? null : (
          <Words x={gap - 4} y={24} italic bold size={18}>
            {String(count)}
          </Words>
        )}
      </>
    ),
  };
}

/** A hairpin to measure under two notes. */
function hairpin(d: string, more?: ReactNode): LineSign {
  return {
    around: (
      <>
        {lines}
        <Note x={26} y={65} stem="up" />
        <Note x={122} y={60} stem="up" />
      </>
    ),
    sign: (
      <>
        <path d={d} fill="none" stroke="currentColor" strokeWidth="1.6" strokeLinejoin="round" />
        {more}
      </>
    ),
  };
}

/** Small notes run up to the note they adorn. */
function graceRun(count: number): LineSign {
  const heads = Array.from({ length: count }, (_, i) => 86 - (count - i) * 13);
  const first = heads[0] ?? 70;
  return {
    around: (
      <>
        {lines}
        <Note x={96} y={55} />
      </>
    ),
    sign: (
      <>
        {heads.map((x) => (
          <Note key={x} x={x} y={55} stem="up" small />
        ))}
        <path d={`M${first + 6.8} 32H84v3.4H${first + 6.8}z`} fill="currentColor" />
      </>
    ),
  };
}

/** Two notes under a curve with the letter of what the hand does. */
function slurLettered(letter: string, from: number, to: number): LineSign {
  return {
    around: (
      <>
        {lines}
        <Note x={38} y={from} />
        <Note x={106} y={to} />
      </>
    ),
    sign: (
      <>
        <Slur from={44} to={112} y={36} height={11} />
        <Words x={72} y={20} size={17}>
          {letter}
        </Words>
      </>
    ),
  };
}

function overNote(words: string, italic = true): LineSign {
  return {
    around: threeNotes,
    sign: (
      <Words x={26} y={26} italic={italic} size={19}>
        {words}
      </Words>
    ),
  };
}

export const LINE_SIGNS: Readonly<Record<string, LineSign>> = {
  slur: { around: threeNotes, sign: <Slur from={36} to={120} y={38} height={16} /> },
  "phrase-mark": {
    around: (
      <>
        {lines}
        <Note x={14} y={55} />
        <Note x={50} y={50} />
        <Note x={86} y={55} />
        <Note x={126} y={50} />
      </>
    ),
    sign: <Slur from={18} to={134} y={36} height={20} />,
  },
  tie: {
    around: (
      <>
        {lines}
        <Note x={34} y={55} />
        <Barline x={80} />
        <Note x={114} y={55} />
      </>
    ),
    sign: <Slur from={46} to={113} y={46} height={9} />,
  },
  "dots-under-slur": {
    around: threeNotes,
    sign: (
      <>
        <Slur from={36} to={120} y={28} height={13} />
        {[36, 78, 120].map((x) => (
          <Placed key={x} name="articStaccatoAbove" x={x} y={34} rest="bottom" />
        ))}
      </>
    ),
  },
  "first-ending": ending("1."),
  "second-ending": ending("2."),
  "numbered-ending": ending("1. 2."),
  "second-time-only": overNote("2nd time only"),
  bracket: { around: threeNotes, sign: <Bracket from={28} to={130} y={22} /> },
  "dashed-line": {
    around: (
      <>
        {threeNotes}
        <Words x={6} y={104} italic size={19}>
          cresc.
        </Words>
      </>
    ),
    sign: <path d="M56 99H150" stroke="currentColor" strokeWidth="1.6" strokeDasharray="9 7" />,
  },
  "rehearsal-mark": {
    around: (
      <>
        {threeNotes}
        <Barline x={12} />
      </>
    ),
    sign: (
      <>
        <rect
          x="2"
          y="6"
          width="22"
          height="24"
          fill="none"
          stroke="currentColor"
          strokeWidth="1.6"
        />
        <Words x={6.5} y={25} bold size={20}>
          B
        </Words>
      </>
    ),
  },
  "to-coda": {
    around: threeNotes,
    sign: (
      <>
        <Words x={50} y={28} size={19} italic>
          To Coda
        </Words>
        <Placed name="coda" x={136} y={21} />
      </>
    ),
  },
  "number-of-times": {
    around: (
      <>
        <StaffLines to={136} />
        <Note x={34} y={55} />
        <Note x={78} y={50} />
        <Placed name="repeatRight" x={136} y={BOTTOM} hold="right" rest="bottom" />
      </>
    ),
    sign: (
      <Words x={112} y={30} bold size={19}>
        3×
      </Words>
    ),
  },
  "metric-modulation": {
    around: threeNotes,
    sign: (
      <>
        <Placed name="metNoteQuarterUp" x={48} y={30} rest="bottom" />
        <Words x={62} y={28} size={20}>
          =
        </Words>
        <Placed name="metNoteHalfUp" x={86} y={30} rest="bottom" />
      </>
    ),
  },
  "cue-notes": {
    around: (
      <>
        {lines}
        <Barline x={10} />
        <Barline x={150} />
      </>
    ),
    sign: (
      <>
        <Words x={20} y={32} size={15}>
          Hn.
        </Words>
        <Note x={30} y={55} small />
        <Note x={62} y={50} small />
        <Note x={94} y={45} small />
        <Note x={124} y={55} small />
      </>
    ),
  },
  "opening-hairpin": hairpin("M134 92L28 99L134 106"),
  "closing-hairpin": hairpin("M28 92L134 99L28 106"),
  hairpin: hairpin("M72 92L14 99L72 106M88 92L146 99L88 106"),
  "messa-di-voce": hairpin("M80 92L16 99L80 106M80 92L144 99L80 106"),
  "niente-circle": hairpin(
    "M28 92L128 98M28 106L128 100",
    <circle cx="131.5" cy="99" r="3.5" fill="none" stroke="currentColor" strokeWidth="1.6" />,
  ),
  "trill-line": {
    around: (
      <>
        {lines}
        <Note x={24} y={55} />
        <Placed name="ornamentTrill" x={30} y={34} rest="bottom" />
      </>
    ),
    sign: (
      <>
        {[0, 1, 2, 3, 4, 5, 6, 7, 8].map((i) => (
          <Placed key={i} name="wiggleTrill" x={44 + i * 10.6} y={28} hold="left" />
        ))}
      </>
    ),
  },
  drag: graceRun(2),
  ruff: graceRun(3),
  "double-stop": {
    around: lines,
    sign: (
      <>
        <Note x={72} y={75} stem="up" />
        <Note x={72} y={55} stem="up" />
      </>
    ),
  },
  "stemless-note": { around: lines, sign: <Note x={74} y={55} stem="none" /> },
  "hammer-on": slurLettered("H", 60, 50),
  "pull-off": slurLettered("P", 50, 60),
  sticking: {
    around: threeNotes,
    sign: (
      <>
        {["R", "L", "R"].map((hand, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: three fixed letters
          <Words key={i} x={31 + i * 42} y={106} size={17}>
            {hand}
          </Words>
        ))}
      </>
    ),
  },
  duplet: tuplet(2),
  triplet: tuplet(3),
  tuplet: tuplet(3),
  quadruplet: tuplet(4),
  quintuplet: tuplet(5),
  sextuplet: tuplet(6),
  septuplet: tuplet(7),
  "feathered-beam": {
    around: (
      <>
        {lines}
        {[14, 58, 92, 116, 132].map((x) => (
          <Note key={x} x={x} y={75} stem="up" />
        ))}
      </>
    ),
    sign: <path d="M24.6 38H143v4H24.6zM24.6 41L143 50v4zM24.6 41L143 60v4z" fill="currentColor" />,
  },
  "non-arpeggiato": {
    around: (
      <>
        {lines}
        <Note x={78} y={75} stem="up" />
        <Note x={78} y={65} stem="none" />
        <Note x={78} y={55} stem="up" />
      </>
    ),
    sign: <path d="M72 49H66V81H72" fill="none" stroke="currentColor" strokeWidth="1.6" />,
  },
  "editorial-accidental": {
    around: threeNotes,
    sign: <Placed name="accidentalSharp" x={78} y={TOP - 6} rest="bottom" />,
  },
  "slide-line": {
    around: (
      <>
        {lines}
        <Note x={30} y={70} stem="up" />
        <Note x={118} y={50} />
      </>
    ),
    sign: <path d="M45 68L114 52" stroke="currentColor" strokeWidth="1.6" />,
  },
  swing: overNote("Swing", false),
  straight: overNote("Straight", false),
};
