import type { Tools } from "../../tools"

/** Sections as they are counted: "3 пасма". */
export const sectionCount = (t: Tools, sections: number) =>
  t.count(sections, { one: "# пасмо", few: "# пасма", many: "# пасом", other: "# пасма" })

/** Foils as they are counted: "3 фольги". */
export const foilCount = (t: Tools, foils: number) =>
  t.count(foils, { one: "# фольга", few: "# фольги", many: "# фольг", other: "# фольги" })
