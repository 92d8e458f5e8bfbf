"use client";
import { type DeviceStore, openDeviceStore } from "@/lib/store/device-store";

let opening: Promise<DeviceStore> | undefined;

/**
 * The device's store, opened once for all screens.
 * @throws StoreError where the browser keeps nothing; the next call tries anew
 */
export function device(): Promise<DeviceStore> {
  opening ??= openDeviceStore().catch((error: unknown) => {
    opening = undefined;
    throw error;
  });
  return opening;
}
