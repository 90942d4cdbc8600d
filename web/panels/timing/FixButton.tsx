import { calledFix, type Fix } from "../../core/fixes/fix"
import { fixEdit } from "../../core/fixes/fixEdit"
import type { Service } from "../../core/schedule/scheduleInput"
import { commit } from "../../session/commit"
import { useWords } from "../../session/words"
import { say } from "../../words/say"

/** One fix: one touch, and one undo under the same words. */
export function FixButton({ fix, service }: { fix: Fix; service: Service }) {
  const { fixes } = useWords().timing
  const code = calledFix(fix, service)
  return (
    <button
      type="button"
      className="button"
      onClick={() => commit({ chapter: "timing", ...code }, fixEdit(fix, service))}
    >
      {say(fixes, code)}
    </button>
  )
}
