import { firstProblems, problemsOf } from "../checks/problem"
import type { Problem } from "../fields/problem"
import { type OwnLesson, ownLessonSchema } from "../technique/lessonSchema"

/** What an educator wrote, as it would come back from a plan's file, or what keeps it from being kept. */
export function checkLesson(
  own: OwnLesson,
): { ok: true; own: OwnLesson } | { ok: false; problems: Problem[] } {
  const parsed = ownLessonSchema.safeParse(own)
  if (parsed.success) return { ok: true, own: parsed.data }
  return {
    ok: false,
    problems: firstProblems(parsed.error.issues.flatMap((issue) => problemsOf(issue, own))),
  }
}
