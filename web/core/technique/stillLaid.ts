import type { Lesson } from "./lessonSchema"

type Taught = { lesson?: Lesson | undefined; sections: readonly { id: string }[] }

/** The techniques that a plan was laid from and of which it still holds a section, in the order they were laid. */
export function stillLaid({ lesson, sections }: Taught): Lesson["laid"] {
  const here = new Set(sections.map(({ id }) => id))
  return (lesson?.laid ?? []).filter((each) => each.sections.some((id) => here.has(id)))
}
