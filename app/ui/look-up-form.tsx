import Form from "next/form";
import { Field } from "./field";

interface LookUpFormProps {
  look?: "engraved" | "small";
  /** Only on the page whose one purpose is looking up. */
  autoFocus?: boolean;
  defaultValue?: string;
}

/** Asks the start page: `/?q=martell`. Works without a script as a plain form. */
export function LookUpForm({ look = "engraved", autoFocus, defaultValue }: LookUpFormProps) {
  return (
    <Form action="/" role="search">
      <Field
        label="Look up a word or sign"
        labelAt="quiet"
        look={look}
        type="search"
        name="q"
        placeholder="look up a word or sign"
        autoComplete="off"
        autoCapitalize="none"
        autoCorrect="off"
        spellCheck={false}
        enterKeyHint="search"
        autoFocus={autoFocus}
        defaultValue={defaultValue}
      />
    </Form>
  );
}
