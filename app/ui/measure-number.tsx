import styles from "./measure-number.module.css";

interface MeasureNumberProps {
  /** As printed: "9", "12a". */
  number: string;
  /** Last measure of a stretch. */
  through?: string;
}

/** A measure number, bold wherever it stands; spoken with the word "measure". */
export function MeasureNumber({ number, through }: MeasureNumberProps) {
  const isRange = through !== undefined && through !== number;
  return (
    <b className={styles.number}>
      <span className="aside-for-ears">{isRange ? "measures " : "measure "}</span>
      {number}
      {isRange ? (
        <>
          <span aria-hidden="true">–</span>
          <span className="aside-for-ears"> to </span>
          {through}
        </>
      ) : null}
    </b>
  );
}
