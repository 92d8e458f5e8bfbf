import { Fragment } from "react";
import { MeasureNumber } from "../ui/measure-number";
import type { MeasureTold } from "../ui/ribbon/tell-measure";
import { Row, Rows } from "../ui/rows";
import { LeadView } from "./lead-view";
import styles from "./page.module.css";

/** What is in force in one measure and why. */
export function MeasurePanel({ told }: { told: MeasureTold }) {
  return (
    <div className={styles.told}>
      <p className={styles.sentence}>{told.sentence}</p>
      {told.rows.length === 0 ? null : (
        <Rows label={`In force in measure ${told.number}`}>
          {told.rows.map(({ key, lead, asks, since }) => (
            <Fragment key={key}>
              <Row
                href={lead.kind === "said" || lead.slug === null ? undefined : `/terms/${lead.slug}`}
                lead={<LeadView lead={lead} />}
                note={
                  <>
                    {asks}
                    {since === null ? null : (
                      <>
                        , still from <MeasureNumber number={since} />
                      </>
                    )}
                  </>
                }
              />
            </Fragment>
          ))}
        </Rows>
      )}
    </div>
  );
}
