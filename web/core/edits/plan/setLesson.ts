import type { Edit } from "../../document/edit"
import type { OwnLesson } from "../../technique/lessonSchema"

/** What an educator wrote for the class in the place of what the plan says; without any of it the plan speaks for itself. */
export const setLesson =
  (own: OwnLesson): Edit =>
  (plan) => {
    const { own: _, ...kept } = plan.lesson ?? { laid: [] }
    const lesson = Object.keys(own).length > 0 ? { ...kept, own } : kept
    return { ...plan, lesson }
  }
