import { useEffect, useState } from "react"
import { foilsTimed, type Lesson, lessonsOf, paceOf } from "../../core/chair/learntPace"
import type { Plan } from "../../core/document/schema"
import { foilKinds } from "../../core/document/serviceRecord"
import { usualTiming } from "../../core/document/usualTiming"
import { setTiming } from "../../core/edits/plan/setTiming"
import { kindWords } from "../../core/text/words"
import { commit } from "../../session/commit"
import { browserShelf } from "../../storage/browserShelf"
import { listServed } from "../../storage/shelfServices"
import { Scroller } from "../fields/Scroller"

/** How fast each person has really been, over every service on the shelf, and the way to plan with it. */
export function ChairLessons({ plan }: { plan: Plan }) {
  const lessons = lessonsOf(usePlansServed(plan))
  if (lessons.length === 0) return null
  return (
    <section aria-labelledby="lessons-title">
      <h2 id="lessons-title">Pace at the chair</h2>
      <Scroller name="Minutes a foil, by person and kind">
        <table className="times">
          <thead>
            <tr>
              <th scope="col">Who</th>
              <th scope="col">Foils timed</th>
              {foilKinds.map((kind) => (
                <th scope="col" key={kind}>
                  {kindWords[kind]}, min
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
  const pace = paceOf(lesson, (plan.timing ?? usualTiming).skill)
  return (
    <tr>
      <th scope="row">{lesson.person || "No name given"}</th>
      <td>
        {foilsTimed(lesson)} in {lesson.services === 1 ? "1 service" : `${lesson.services} services`}
      </td>
      {foilKinds.map((kind) => (
        <td key={kind}>
          {lesson.minutes[kind].length === 0
            ? "–"
            : `${oneDecimal(pace[kind].low)}–${oneDecimal(pace[kind].high)}`}
        </td>
      ))}
    </tr>
  )
}

function PlanWithPace({ lesson, plan }: { lesson: Lesson; plan: Plan }) {
  const timing = plan.timing ?? usualTiming
  const pace = paceOf(lesson, timing.skill)
  const whose = lesson.person ? `${lesson.person}’s pace` : "this pace"
  return (
    <>
      <button
        type="button"
        className="button"
        onClick={() => commit("Plan with the pace of the chair", setTiming({ pace }))}
      >
        Plan with {whose}
      </button>{" "}
      {timing.hands === 2 && (
        <button
          type="button"
          className="button"
          onClick={() =>
            commit("Plan the second pair with the pace of the chair", setTiming({ secondPace: pace }))
          }
        >
          {lesson.person ? `${lesson.person} as second pair` : "Second pair with this pace"}
        </button>
      )}
    </>
  )
}

const oneDecimal = (minutes: number) => minutes.toFixed(1)

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
