import { newId } from "@/lib/ui/brew/new-id";

const ID_KEY = "gylebook-device";
const SEQUENCE_KEY = "gylebook-device-sequence";

/** Used when the browser keeps nothing: then each visit is a device of its own. */
let passing: { readonly id: string; sequence: number } | null = null;

/** What tells this device's entries from those of others: its own number, and a count that never repeats. */
export interface DeviceStamp {
  readonly deviceId: string;
  readonly deviceSeq: number;
}

/** Takes the next number of this device. */
export function nextDeviceStamp(): DeviceStamp {
  try {
    return nextKept(window.localStorage);
  } catch {
    // Storage is shut in some private windows; the reading is still worth saving.
    passing ??= { id: newId(), sequence: 0 };
    passing.sequence += 1;
    return { deviceId: passing.id, deviceSeq: passing.sequence };
  }
}

function nextKept(storage: Storage): DeviceStamp {
  const deviceId = storage.getItem(ID_KEY) ?? newId();
  const last = Number(storage.getItem(SEQUENCE_KEY) ?? "0");
  const deviceSeq = Number.isSafeInteger(last) ? last + 1 : 1;
  storage.setItem(ID_KEY, deviceId);
  storage.setItem(SEQUENCE_KEY, String(deviceSeq));
  return { deviceId, deviceSeq };
}
