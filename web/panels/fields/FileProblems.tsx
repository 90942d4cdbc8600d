import type { Problem } from "../../core/fields/problem"
import { useWords } from "../../session/words"

/** Everything that keeps a file from being opened, each with its place in the file. */
export function FileProblems({ problems }: { problems: readonly Problem[] }) {
  const { common, problems: words } = useWords()
  return (
    <div className="problems" role="alert">
      <h3>{common.fields.notOpened}</h3>
      <ul>
        {problems.map((problem) => (
          <li key={`${problem.path} ${problem.code}`}>
            {words.sentence(problem)}
            {problem.path !== "file" && <code> {problem.path}</code>}
          </li>
        ))}
      </ul>
    </div>
  )
}
