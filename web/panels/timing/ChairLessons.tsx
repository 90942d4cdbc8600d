import { useEffect, useState } from "react"
import { foilsTimed, type Lesson, lessonsOf, paceOf } from "../../core/chair/learntPace"
import type { Plan } from "../../core/document/schema"
import { usualTiming } from "../../core/document/usualTiming"
import { setTiming } from "../../core/edits/plan/setTiming"
import { foilKinds } from "../../core/kinds/kindRecords"
import { commit } from "../../session/commit"
import { useWords } from "../../session/words"
import { browserShelf } from "../../storage/browserShelf"
import { listServed } from "../../storage/shelfServices"
import { Scroller } from "../fields/Scroller"

/** How fast each person has really been, over every service on the shelf, and the way to plan with it. */
export function ChairLessons({ plan }: { plan: Plan }) {
  const lessons = lessonsOf(usePlansServed(plan))
  const { timing, common } = useWords()
  const w = timing.lessons
  if (lessons.length === 0) return null
  return (
    <section aria-labelledby="lessons-title">
      <h2 id="lessons-title">{w.title}</h2>
      <Scroller name={w.name}>
        <table className="times">
          <thead>
            <tr>
              <th scope="col">{w.who}</th>
              <th scope="col">{w.timed}</th>
              {foilKinds.map((kind) => (
                <th scope="col" key={kind}>
                  {w.kind(common.kinds[kind])}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {lessons.map((lesson) => (
              <LessonRow key={lesson.person} lesson={lesson} plan={plan} />
            ))}
          </tbody>
        </table>
      </Scroller>
      <ul className="actions">
        {lessons.map((lesson) => (
          <li key={lesson.person}>
            <PlanWithPace lesson={lesson} plan={plan} />
          </li>
        ))}
      </ul>
    </section>
  )
}

function LessonRow({ lesson, plan }: { lesson: Lesson; plan: Plan }) {
  const pace = paceOf(lesson, (plan.timing ?? usualTiming).skill, plan.salon?.start)
  const w = useWords().timing.lessons
  return (
    <tr>
      <th scope="row">{lesson.person || w.noName}</th>
      <td>{w.foils({ foils: foilsTimed(lesson), services: lesson.services })}</td>
      {foilKinds.map((kind) => (
        <td key={kind}>{lesson.minutes[kind].length === 0 ? w.none : w.range(pace[kind])}</td>
      ))}
    </tr>
  )
}

function PlanWithPace({ lesson, plan }: { lesson: Lesson; plan: Plan }) {
  const timing = plan.timing ?? usualTiming
  const pace = paceOf(lesson, timing.skill, plan.salon?.start)
  const w = useWords().timing.lessons
  return (
    <>
      <button
        type="button"
        className="button"
        onClick={() => commit({ chapter: "timing", code: "learn-pace" }, setTiming({ pace }))}
      >
        {w.planWith(lesson.person)}
      </button>{" "}
      {timing.hands === 2 && (
        <button
          type="button"
          className="button"
          onClick={() =>
            commit({ chapter: "timing", code: "learn-second-pace" }, setTiming({ secondPace: pace }))
          }
        >
          {w.asAssistant(lesson.person)}
        </button>
      )}
    </>
  )
}

/** Every plan of the shelf with a recorded service; the one on the screen as it is now. */
function usePlansServed(plan: Plan): readonly Plan[] {
  const [kept, setKept] = useState<readonly Plan[]>([])
  useEffect(() => {
    let isShown = true
    listServed(browserShelf).then(
      (plans) => isShown && setKept(plans),
      () => {},
    )
    return () => {
      isShown = false
    }
  }, [])
  return [...kept.filter(({ id }) => id !== plan.id), plan]
}
