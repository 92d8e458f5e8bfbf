import type { Answer, PromptKind } from "./answer";
import { DAY_MS, dayOf } from "./day";
import { createTrialReader, gotOf, type Moment } from "./evidence";
import { compareAnswers } from "./log";
import { createPace, type Pace } from "./pace";
import { createStudent, type Student } from "./student";

/** What the log says of one entry. */
export interface EntryFold {
  answers: number;
  /** The student's own days on which it was recalled unaided. */
  rightDays: ReadonlySet<number>;
  /** Own day of the first answer. */
  firstDay: number;
  last: Answer;
  /** Right answers by kind of prompt. */
  rightBy: ReadonlyMap<PromptKind, number>;
  /** Every right answer so far was chosen among alternatives. */
  chosenOnly: boolean;
  /** Entries given instead, with how often. */
  chose: ReadonlyMap<string, number>;
  /** Misses of the last day it was asked, with the answers given to any entry since the latest. */
  missedOn: { day: number; position: number } | null;
}

/** A student's log, folded: all that is shown and planned is read from here. */
export interface LogFold {
  readonly student: Student;
  readonly pace: Pace;
  entry(slug: string): EntryFold | undefined;
  /** Answers taken in. */
  count(): number;
  /** The last answer's entries, oldest first, at most eight. */
  recent(): readonly string[];
  /** Seconds given to an entry on one of the student's own days. */
  secondsOn(day: number, slug: string): number;
  /** Moments as memory feels them: `at` in milliseconds since 1970 UTC. */
  moment(at: number): Moment;
  /** Takes one more answer; it must not lie before the last one. */
  take(answer: Answer): void;
}

interface Held extends EntryFold {
  rightDays: Set<number>;
  rightBy: Map<PromptKind, number>;
  chose: Map<string, number>;
}

/**
 * Folds a log. Do it once and pass the result on; `take` adds the answers that follow.
 *
 * @param answers in any order
 */
export function foldLog(answers: readonly Answer[]): LogFold {
  const fold = createFold();
  for (const answer of [...answers].sort(compareAnswers)) fold.take(answer);
  return fold;
}

function createFold(): LogFold {
  const student = createStudent();
  const pace = createPace();
  const read = createTrialReader();
  const entries = new Map<string, Held>();
  const seconds = new Map<string, number>();
  const recent: string[] = [];
  let last: Moment = { days: 0, study: 0 };
  let count = 0;
  return {
    student,
    pace,
    entry: (slug) => entries.get(slug),
    count: () => count,
    recent: () => recent,
    secondsOn: (day, slug) => seconds.get(`${day} ${slug}`) ?? 0,
    // A device whose clock went back must not make memory run backwards.
    moment: (at) => ({ days: Math.max(last.days, at / DAY_MS), study: last.study }),
    take(answer) {
      const trial = read(answer);
      last = { days: Math.max(last.days, trial.at.days), study: trial.at.study };
      student.observe({ ...trial, at: last });
      count += 1;
      entries.set(answer.entry, follow(entries.get(answer.entry), answer, count));
      const key = `${trial.day} ${answer.entry}`;
      seconds.set(key, (seconds.get(key) ?? 0) + pace.add(answer));
      recent.push(answer.entry);
      if (recent.length > 8) recent.shift();
    },
  };
}

function follow(before: Held | undefined, answer: Answer, position: number): Held {
  const held: Held = before ?? {
    answers: 0,
    rightDays: new Set(),
    firstDay: dayOf(answer),
    last: answer,
    rightBy: new Map(),
    chosenOnly: false,
    chose: new Map(),
    missedOn: null,
  };
  const right = gotOf(answer) === 1;
  held.answers += 1;
  held.last = answer;
  if (right) {
    held.chosenOnly =
      answer.options !== undefined && (held.chosenOnly || held.rightDays.size === 0);
    held.rightDays.add(dayOf(answer));
    held.rightBy.set(answer.prompt, (held.rightBy.get(answer.prompt) ?? 0) + 1);
  } else if (answer.chose && answer.chose !== answer.entry) {
    held.chose.set(answer.chose, (held.chose.get(answer.chose) ?? 0) + 1);
  }
  held.missedOn = right ? null : { day: dayOf(answer), position };
  return held;
}
