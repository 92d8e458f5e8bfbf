import { asSentence, familyLine } from "@/lib/glossary/family-words";
import type { Entry } from "@/lib/glossary/schema";
import styles from "./entry-head.module.css";
import { SignOnStaff } from "./sign-on-staff";
import { Term } from "./term";

/** The word as printed, how it is said, and its meaning in one sentence. */
export function EntryHead({ entry }: { entry: Entry }) {
  const printed = [...(entry.abbreviations ?? [])];
  return (
    <header>
      <div className={styles.title}>
        <p className="lane-name">{familyLine(entry)}</p>
        <h1 className={styles.word}>
          <Term lang={entry.lang} size="head">
            {entry.headword}
          </Term>
        </h1>
        {entry.sign ? (
          <div className={styles.figure}>
            <SignOnStaff entry={entry} />
          </div>
        ) : null}
      </div>
      <p className={styles.said}>
        {entry.say ? <Respelling say={entry.say} /> : null}
        {entry.ipa ? (
          <span className={styles.ipa} lang={`${entry.lang}-fonipa`}>
            /{entry.ipa}/
          </span>
        ) : null}
        {printed.length > 0 ? (
          <span>
            <span className="aside-for-ears">also printed </span>
            {printed.map((text, i) => (
              <span key={text}>
                {i > 0 ? ", " : null}
                <Term lang={entry.lang}>{text}</Term>
              </span>
            ))}
          </span>
        ) : null}
        {entry.literal ? <span>word for word “{entry.literal}”</span> : null}
      </p>
      <p className={styles.meaning}>{asSentence(entry.meaning)}</p>
    </header>
  );
}

/** `mar-tel-LAH-toh` with its stressed syllable bold, as large letters are read out one by one. */
function Respelling({ say }: { say: string }) {
  return (
    <span>
      <span className="aside-for-ears">say </span>
      {say.split(/([^\s-]*[A-Z]{2,}[^\s-]*)/).map((part, i) =>
        i % 2 === 1 ? (
          // biome-ignore lint/suspicious/noArrayIndexKey: the parts of a fixed text never move
          <b key={i}>{part.toLowerCase()}</b>
        ) : (
          part
        ),
      )}
    </span>
  );
}
