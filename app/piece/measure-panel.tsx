import { MeasureNumber } from "../ui/measure-number";
import type { MeasureTold } from "../ui/ribbon/tell-measure";
import { Rows } from "../ui/rows";
import { AskedRow } from "./asked-row";
import styles from "./page.module.css";

/** What is in force in one measure and why. */
export function MeasurePanel({ told }: { told: MeasureTold }) {
  return (
    <div className={styles.told}>
      <p className={styles.sentence}>{told.sentence}</p>
      {told.rows.length === 0 ? null : (
        <Rows label={`In force in measure ${told.number}`}>
          {told.rows.map(({ key, lead, asks, since }) => (
            <AskedRow key={key} lead={lead}>
              {asks}
              {since === null ? null : (
                <>
                  , still from <MeasureNumber number={since} />
                </>
              )}
            </AskedRow>
          ))}
        </Rows>
      )}
    </div>
  );
}
