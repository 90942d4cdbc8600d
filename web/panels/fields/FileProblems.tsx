import type { Problem } from "../../core/checks/problem"

/** Everything that keeps a file from being opened, each with its place in the file. */
export function FileProblems({ problems }: { problems: readonly Problem[] }) {
  return (
    <div className="problems" role="alert">
      <h3>This was not opened. The plan on the screen is as it was.</h3>
      <ul>
        {problems.map(({ path, expected }) => (
          <li key={`${path} ${expected}`}>
            {expected}
            {path !== "file" && <code> {path}</code>}
          </li>
        ))}
      </ul>
    </div>
  )
}
