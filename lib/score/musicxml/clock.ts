import { fraction, greatestCommonDivisor, ZERO } from "../fraction";
import type { Fraction } from "../model";

/** Ticks beyond this are no longer exact, so the value that led there is refused. */
const MAX_TICKS = 2 ** 48;
const MAX_TICKS_PER_QUARTER = 2 ** 26;
/** Fractions kept to be used again. */
const MAX_KNOWN = 2000;

/**
 * Where in the measure a part has got to. Positions are whole ticks; the number
 * of ticks in a quarter note grows when divisions change within a measure, so
 * every onset stays an exact fraction.
 */
export class Clock {
  /** False until divisions are known; then time stands still at the barline. */
  known = false;
  private perQuarter = 1;
  private divisions: Fraction = [1, 1];
  private ticksPerDivision = 1;
  private cursor = 0;
  private lastNote = 0;
  private furthest = 0;
  /** Fractions made so far for `knownFor` ticks a quarter. */
  private readonly knownPlaces = new Map<number, Fraction>();
  private knownFor = 0;

  /** Takes divisions a quarter note, above 0. Returns false when they are too fine to count exactly. */
  setDivisions(divisions: Fraction): boolean {
    const perQuarter = divisions[0];
    const fits =
      this.cursor === 0 && this.furthest === 0
        ? perQuarter <= MAX_TICKS_PER_QUARTER
        : this.rescale(perQuarter);
    this.known = fits;
    if (!fits) return false;
    if (this.furthest === 0) this.perQuarter = perQuarter;
    this.divisions = divisions;
    this.ticksPerDivision = (this.perQuarter / perQuarter) * divisions[1];
    return true;
  }

  forgetDivisions(): void {
    this.known = false;
  }

  startMeasure(): void {
    this.cursor = 0;
    this.lastNote = 0;
    this.furthest = 0;
    if (this.known && this.perQuarter !== this.divisions[0]) this.setDivisions(this.divisions);
  }

  /** Ticks of a duration in divisions, null when it cannot be kept exactly. */
  ticks([numerator, denominator]: Fraction): number | null {
    if (!this.known) return 0;
    if (denominator !== 1) {
      const needed = denominator / greatestCommonDivisor(denominator, this.ticksPerDivision);
      if (!this.rescale(this.perQuarter * needed)) return null;
      this.ticksPerDivision = (this.perQuarter / this.divisions[0]) * this.divisions[1];
    }
    const ticks = (numerator / denominator) * this.ticksPerDivision;
    return Math.abs(ticks) < MAX_TICKS ? Math.round(ticks) : null;
  }

  /** Starts a note here, or with the note before when `chord`, and moves past it. */
  placeNote(ticks: number, chord: boolean): number {
    if (chord) return this.lastNote;
    this.lastNote = this.cursor;
    this.move(ticks);
    return this.lastNote;
  }

  /** Returns false when the move would pass the left barline or leave exact numbers; it stops there. */
  move(ticks: number): boolean {
    const to = this.cursor + ticks;
    this.cursor = Math.min(Math.max(to, 0), MAX_TICKS);
    if (this.cursor > this.furthest) this.furthest = this.cursor;
    return to === this.cursor;
  }

  /** Position a note or direction would take now, in ticks. */
  get here(): number {
    return this.cursor;
  }

  /** Onset of the note read last: where a chord note goes. */
  get noteStart(): number {
    return this.lastNote;
  }

  /** Ticks as quarter notes. The same place in every measure is one and the same fraction. */
  quarters(ticks: number): Fraction {
    if (ticks === 0) return ZERO;
    if (this.knownFor !== this.perQuarter || this.knownPlaces.size > MAX_KNOWN) {
      this.knownPlaces.clear();
      this.knownFor = this.perQuarter;
    }
    const known = this.knownPlaces.get(ticks);
    if (known !== undefined) return known;
    const place = fraction(ticks, this.perQuarter);
    this.knownPlaces.set(ticks, place);
    return place;
  }

  /** Content of the measure so far in quarter notes. */
  length(): Fraction {
    return this.quarters(this.furthest);
  }

  private rescale(multipleOf: number): boolean {
    const factor = multipleOf / greatestCommonDivisor(this.perQuarter, multipleOf);
    const perQuarter = this.perQuarter * factor;
    if (perQuarter > MAX_TICKS_PER_QUARTER || this.furthest * factor > MAX_TICKS) return false;
    this.perQuarter = perQuarter;
    this.cursor *= factor;
    this.lastNote *= factor;
    this.furthest *= factor;
    return true;
  }
}
