import type { Section } from "../../../geometry/section/section"
import type { SectionPatch } from "../../core/edits/sections/changeSections"
import type { Done } from "../../session/words"

/** What a group of fields of one section is given. */
export type GroupProps = { section: Section; change: (done: Done, patch: SectionPatch) => void }
