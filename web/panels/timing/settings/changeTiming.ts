import type { TimingChoices } from "../../../core/document/timingChoices"
import { setTiming } from "../../../core/edits/plan/setTiming"
import { commit } from "../../../session/commit"
import type { TimingWords } from "../../../words/en/timing/timing"

/** The settings of the clock, each change by the code that undo calls it by. */
export type SettingCode = Extract<keyof TimingWords["done"], `set-${string}`>
export type ChangeTiming = (code: SettingCode, part: Partial<TimingChoices>) => boolean

export const changeTiming: ChangeTiming = (code, part) => commit({ chapter: "timing", code }, setTiming(part))
