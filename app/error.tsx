"use client";
import { useEffect } from "react";
import { Button, ButtonLink, ButtonRow } from "./ui/button";
import styles from "./ui/state-page.module.css";

interface ErrorPageProps {
  error: Error & { digest?: string };
  retry: () => void;
}

export default function ErrorPage({ error, retry }: ErrorPageProps) {
  useEffect(() => {
    console.error(error);
  }, [error]);
  return (
    <div className={styles.state} role="alert">
      <h1>This page stopped.</h1>
      <p>
        It is a fault of ours, not of yours. Your pieces and answers are safe on this device. Try
        once more; if it stops again, look the word up anew.
      </p>
      {error.digest ? <p className="small soft">For your teacher: fault {error.digest}.</p> : null}
      <ButtonRow>
        <Button kind="filled" onClick={retry}>
          Try once more
        </Button>
        <ButtonLink href="/">Look up</ButtonLink>
      </ButtonRow>
    </div>
  );
}
