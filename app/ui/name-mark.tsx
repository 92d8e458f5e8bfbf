import styles from "./name-mark.module.css";

/**
 * The mark of the house: the barlines a passage starts from, and one phrase
 * drawn from them. The same path is app/icon.svg.
 */
export function NameMark({ withName = true }: { withName?: boolean }) {
  return (
    <span className={styles.mark}>
      <svg viewBox="0 0 32 32" className={styles.figure} aria-hidden="true" focusable="false">
        <path
          fill="currentColor"
          d="M4 2h6v28H4zM13 2h2.25v28H13zM15.25 2.5C35 2.5 35 21 15.25 21C27 20 27 3.5 15.25 2.5z"
        />
      </svg>
      <span className={withName ? undefined : "aside-for-ears"}>Passagework</span>
    </span>
  );
}
