export type ScoreProblemCode =
  | "empty"
  | "not-xml"
  | "not-well-formed"
  | "not-music"
  | "unknown-root"
  | "bad-encoding"
  | "entity"
  | "bad-archive"
  | "bad-rootfile"
  | "no-container"
  | "too-large"
  | "too-deep"
  | "too-slow"
  | "bad-value"
  | "no-measures";

/** Why a file cannot be read: where it went wrong, what stood there, what to do. */
export interface ScoreProblem {
  code: ScoreProblemCode;
  place: {
    file: string;
    line?: number;
    column?: number;
    partId?: string;
    measureNumber?: string;
  };
  found: string;
  expected: string;
  remedy: string;
}

/**
 * One plain sentence for a problem.
 * @example "sonatina.musicxml:118:7, part P1, measure 12: divisions is \"0\"; expected a number above 0. Export the score again."
 */
export function formatScoreProblem({ place, found, expected, remedy }: ScoreProblem): string {
  const line = place.line === undefined ? "" : `:${place.line}`;
  const column = place.column === undefined ? "" : `:${place.column}`;
  const part = place.partId ? `, part ${place.partId}` : "";
  const measure = place.measureNumber ? `, measure ${place.measureNumber}` : "";
  return `${place.file}${line}${column}${part}${measure}: ${found}; expected ${expected}. ${remedy}`;
}

export class ScoreReadError extends Error {
  override readonly name = "ScoreReadError";
  constructor(
    readonly problem: ScoreProblem,
    options?: ErrorOptions,
  ) {
    super(formatScoreProblem(problem), options);
  }
}
