"use client";
import { useCallback, useSyncExternalStore } from "react";

/** Whether the page has the width of a desk; false until known, as on a phone. */
export function useIsDesk(): boolean {
  return useMedia("(min-width: 56rem)");
}

function useMedia(query: string): boolean {
  const subscribe = useCallback(
    (changed: () => void) => {
      const media = window.matchMedia(query);
      media.addEventListener("change", changed);
      return () => media.removeEventListener("change", changed);
    },
    [query],
  );
  return useSyncExternalStore(
    subscribe,
    () => window.matchMedia(query).matches,
    () => false,
  );
}

/** Whether the device says it has no network; false until known. */
export function useIsOffline(): boolean {
  return useSyncExternalStore(
    (changed) => {
      window.addEventListener("online", changed);
      window.addEventListener("offline", changed);
      return () => {
        window.removeEventListener("online", changed);
        window.removeEventListener("offline", changed);
      };
    },
    () => !navigator.onLine,
    () => false,
  );
}
