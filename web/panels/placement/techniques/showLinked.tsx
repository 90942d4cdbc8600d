import { createRoot, type Root } from "react-dom/client"
import { readFragment } from "../../../core/file/techniqueLink"
import { LinkedTechnique } from "./LinkedTechnique"

let root: Root | null = null

/** Shows what a link tells beside the app, so that the app waits for nothing; once it is closed the address is bare again. */
export async function showLinked(fragment: string) {
  const opened = await readFragment(fragment)
  root ??= createRoot(document.body.appendChild(document.createElement("div")))
  root.render(<LinkedTechnique key={fragment} opened={opened} onClose={forget} />)
}

function forget() {
  root?.render(null)
  history.replaceState(null, "", location.pathname + location.search)
}
