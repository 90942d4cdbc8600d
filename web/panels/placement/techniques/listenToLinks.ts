import { isTechniqueLink } from "../../../core/file/techniqueLink"

/** Opens the technique that the address of the page tells, now and whenever another is told. */
export function listenToLinks() {
  const open = async () => {
    if (!isTechniqueLink(location.hash)) return
    const { showLinked } = await import("./showLinked")
    await showLinked(location.hash)
  }
  window.addEventListener("hashchange", () => void open())
  return open()
}
