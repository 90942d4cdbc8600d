import { type EmergencyName, emergencyNames } from "../../../presets/chair/emergencies"

/**
 * Version 1 kept what the chair said as English sentences, and what the red button was touched for by its English title.
 * The words are kept; a title that is known becomes its name.
 */
export function liftService1(raw: unknown): unknown {
  if (!isGroup(raw)) return raw
  return {
    ...raw,
    ...(isGroup(raw.service) && { service: liftRecord1(raw.service) }),
    ...(Array.isArray(raw.earlier) && { earlier: raw.earlier.map(liftRecord1) }),
    ...(Array.isArray(raw.alarms) && { alarms: raw.alarms.map(liftAlarm) }),
  }
}

/** A service as it was kept with a plan, or the chair of one that was still going on. */
export function liftRecord1(raw: unknown): unknown {
  if (!isGroup(raw)) return raw
  return {
    ...raw,
    ...(Array.isArray(raw.log) && { log: raw.log.map(liftEntry) }),
    ...(Array.isArray(raw.clockNotes) && { clockNotes: raw.clockNotes.map(liftNote) }),
  }
}

const liftEntry = (raw: unknown) =>
  isGroup(raw) ? { ...withNote(raw), tap: isAlarm(raw.tap) ? liftAlarm(raw.tap) : raw.tap } : raw

const liftNote = (raw: unknown) => (isGroup(raw) ? withNote(raw) : raw)

const withNote = (raw: Group): Group =>
  typeof raw.note === "string" ? { ...raw, note: { code: "in-words", words: raw.note } } : raw

const isAlarm = (raw: unknown) => isGroup(raw) && raw.kind === "alarm"

function liftAlarm(raw: unknown): unknown {
  if (!isGroup(raw) || typeof raw.what !== "string" || isName(raw.what)) return raw
  const what = namesBefore[raw.what]
  return what ? { ...raw, what } : { ...raw, what: "other", words: raw.what }
}

const isName = (what: string) => [...emergencyNames, "other"].includes(what)

/** Titles of version 1, each exactly as it was written. */
const namesBefore: Readonly<Record<string, EmergencyName>> = {
  "Hot, swelling or smoking foil": "hot-foil",
  "Burning scalp": "burning",
  "Splash in the eye": "eye",
  "Wheeze, hives or a swelling face": "breathing",
  Faint: "faint",
}

type Group = Readonly<Record<string, unknown>>
const isGroup = (raw: unknown): raw is Group => typeof raw === "object" && raw !== null && !Array.isArray(raw)
