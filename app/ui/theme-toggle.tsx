"use client";
import { useLayoutEffect, useSyncExternalStore } from "react";
import styles from "./theme-toggle.module.css";

type Theme = "device" | "light" | "dark";

const THEMES: readonly { theme: Theme; words: string }[] = [
  { theme: "light", words: "light" },
  { theme: "dark", words: "dark" },
  { theme: "device", words: "as the device" },
];
const KEY = "theme";
const listeners = new Set<() => void>();
/** Holds the choice where storage is shut off. */
let unstored: Theme = "device";

function readTheme(): Theme {
  try {
    const stored = localStorage.getItem(KEY);
    return stored === "light" || stored === "dark" ? stored : unstored;
  } catch {
    return unstored;
  }
}

function applyTheme(theme: Theme): void {
  if (theme === "device") delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme;
}

function chooseTheme(theme: Theme): void {
  unstored = theme;
  try {
    if (theme === "device") localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, theme);
  } catch {
    // The choice then lasts as long as the page.
  }
  applyTheme(theme);
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  window.addEventListener("storage", listener);
  return () => {
    listeners.delete(listener);
    window.removeEventListener("storage", listener);
  };
}

/** Light or dark page. public/theme.js sets the stored choice before the first paint. */
export function ThemeToggle() {
  const chosen = useSyncExternalStore<Theme | null>(subscribe, readTheme, () => null);
  useLayoutEffect(() => {
    if (chosen !== null) applyTheme(chosen);
  }, [chosen]);
  return (
    <fieldset className={styles.toggle}>
      <legend className={styles.legend}>Page</legend>
      {THEMES.map(({ theme, words }) => (
        <button
          key={theme}
          type="button"
          className={styles.choice}
          aria-pressed={chosen === theme}
          onClick={() => chooseTheme(theme)}
        >
          {words}
        </button>
      ))}
    </fieldset>
  );
}
