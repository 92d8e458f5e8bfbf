import { memo } from "react";
import { Sign } from "../sign";
import type { Carried } from "./carried";
import type { LaneName, PlacedLane } from "./layout-ribbon";
import styles from "./ribbon.module.css";
import { css } from "./units";

const LANE_WORDS: Readonly<Record<LaneName, string>> = {
  tempo: "tempo",
  dynamics: "dynamics",
  articulation: "articulation",
  character: "character",
  technique: "technique",
  road: "road",
  marks: "my marks",
};

interface LaneNamesProps {
  lanes: readonly PlacedLane[];
  carried: Carried;
  /** Units. */
  width: number;
}

/** Names of the lanes and, under each, what is carried on from out of sight. */
export const LaneNames = memo(function LaneNames({ lanes, carried, width }: LaneNamesProps) {
  return (
    <div className={styles.names} style={{ width: css(width) }} aria-hidden="true">
      {lanes.map(({ name, top, nameAt }) => {
        const held = carried[name];
        return (
          <div key={name} className={styles.name} style={{ top: css(top + nameAt - 8) }}>
            <span className={styles.lane}>{LANE_WORDS[name]}</span>
            {held === undefined ? null : held.glyph ? (
              <span className={styles.carriedSign}>
                <Sign name={held.glyph} label="" />
              </span>
            ) : (
              <span className={styles.carried} lang={held.lang}>
                {held.text}
              </span>
            )}
          </div>
        );
      })}
    </div>
  );
});
