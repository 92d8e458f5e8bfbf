import { type InputHTMLAttributes, type Ref, useId } from "react";
import styles from "./field.module.css";

interface FieldProps
  extends Omit<InputHTMLAttributes<HTMLInputElement>, "className" | "style" | "id" | "size"> {
  label: string;
  name: string;
  /** `quiet` hides the label from the eye where a heading or the place says it. */
  labelAt?: "above" | "quiet";
  /** One line under the field: what is expected. */
  hint?: string;
  /** What is wrong and how to mend it; takes the place of the hint. */
  error?: string;
  /** `engraved` is for a term being typed: large and in italic. */
  look?: "plain" | "engraved" | "small";
  ref?: Ref<HTMLInputElement>;
}

/** A line to write on. */
export function Field({
  label,
  labelAt = "above",
  hint,
  error,
  look = "plain",
  ...input
}: FieldProps) {
  const id = useId();
  const below = error ?? hint;
  return (
    <div>
      <label htmlFor={id} className={labelAt === "quiet" ? "aside-for-ears" : styles.label}>
        {label}
      </label>
      <input
        {...input}
        id={id}
        className={`${styles.input} ${styles[look]}`}
        aria-invalid={error === undefined ? undefined : true}
        aria-describedby={below === undefined ? undefined : `${id}-below`}
      />
      {below === undefined ? null : (
        <p id={`${id}-below`} className={error === undefined ? styles.hint : styles.error}>
          {error === undefined ? (
            hint
          ) : (
            <>
              <b>Not yet: </b>
              {error}
            </>
          )}
        </p>
      )}
    </div>
  );
}
