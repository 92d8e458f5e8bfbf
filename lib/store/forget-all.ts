import { deleteDB } from "idb";
import type { DeviceStore } from "./device-store";
import { StoreError } from "./records";

/**
 * Removes everything the device keeps: answers, pieces, sets, settings. It cannot be undone.
 * The store given is closed by it; the page must be loaded anew.
 * @throws StoreError where the browser does not let go of it; then everything is still there
 */
export async function forgetAll(store: DeviceStore, name = "passagework"): Promise<void> {
  store.close();
  let isBlocked = false;
  try {
    await new Promise<void>((resolve, reject) => {
      deleteDB(name, {
        // Another tab holds it open and did not close: the removal would wait for ever.
        blocked: () => {
          isBlocked = true;
          reject(new Error("blocked"));
        },
      }).then(resolve, reject);
    });
  } catch (error) {
    throw new StoreError(
      isBlocked
        ? "Another tab of this site is open: close it, then remove everything once more."
        : "The browser did not remove it: load this page again, then try once more.",
      { cause: error },
    );
  }
}
