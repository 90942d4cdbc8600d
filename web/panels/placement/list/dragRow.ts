import { announce } from "../../../session/announcements"
import { sessionStore } from "../../../session/sessionStore"
import { words } from "../../../session/words"
import { applyBeside } from "./listKeys"

type Pressed = { currentTarget: HTMLElement; pointerId: number; clientY: number }
type Drop = { row: HTMLElement; side: "before" | "after" }

const edgePx = 56
const scrollPx = 12

/**
 * Takes a row by its handle and puts it where the hand lets go; a row that is selected takes the whole selection along.
 * Escape calls it off. The keys of the list do the same by Alt and the arrows.
 */
export function dragRow(pressed: Pressed, id: string) {
  const handle = pressed.currentTarget
  const list = handle.closest<HTMLElement>(".foils")
  if (!list) return
  const { selectedIds } = sessionStore.getState()
  const ids = selectedIds.includes(id) ? selectedIds : [id]
  let drop: Drop | null = null
  let at = { x: 0, y: 0 }
  let frame = 0
  const stop = new AbortController()
  const listen = { signal: stop.signal }

  const show = (next: Drop | null) => {
    delete drop?.row.dataset.drop
    if (next) next.row.dataset.drop = next.side
    drop = next
  }
  const follow = () => {
    scrollAtEdge(list, at, pressed.clientY)
    show(dropAt(list, at.y, ids))
    frame = requestAnimationFrame(follow)
  }
  const end = () => {
    cancelAnimationFrame(frame)
    stop.abort()
    show(null)
    for (const row of rowsOf(list)) delete row.dataset.dragged
  }
  const move = (event: PointerEvent) => {
    at = { x: event.clientX, y: event.clientY }
    if (frame !== 0) return
    for (const row of rowsOf(list)) if (ids.includes(idOf(row))) row.dataset.dragged = ""
    follow()
  }
  const letGo = () => {
    const last = drop
    end()
    if (last) applyBeside(ids, idOf(last.row), last.side)
  }
  const onKey = (event: KeyboardEvent) => {
    if (event.key !== "Escape") return
    end()
    announce(words().placement.list.dragCancelled)
  }

  handle.setPointerCapture(pressed.pointerId)
  handle.addEventListener("pointermove", move, listen)
  handle.addEventListener("pointerup", letGo, listen)
  handle.addEventListener("pointercancel", end, listen)
  window.addEventListener("keydown", onKey, listen)
}

const rowsOf = (list: HTMLElement) => [...list.querySelectorAll<HTMLElement>("[role=option]")]
const idOf = (row: HTMLElement) => row.dataset.section ?? ""

/** The row nearest to a height of the screen that is not itself in hand, and the side of it to drop on. */
function dropAt(list: HTMLElement, y: number, ids: readonly string[]): Drop | null {
  const rows = rowsOf(list).filter((row) => !ids.includes(idOf(row)))
  let nearest: { drop: Drop; apart: number } | null = null
  for (const row of rows) {
    const { top, bottom } = row.getBoundingClientRect()
    const [toTop, toBottom] = [Math.abs(y - top), Math.abs(y - bottom)]
    const drop: Drop = { row, side: toTop < toBottom ? "before" : "after" }
    const apart = Math.min(toTop, toBottom)
    if (!nearest || apart < nearest.apart) nearest = { drop, apart }
  }
  return nearest?.drop ?? null
}

/**
 * Scrolls what the list scrolls in while the hand is at its edge, or on what covers the rows above; only the way the
 * hand has gone, for a row may be taken at an edge.
 */
function scrollAtEdge(list: HTMLElement, { x, y }: { x: number; y: number }, fromY: number) {
  const scroller = scrollerOf(list)
  const isPage = scroller === document.documentElement
  const { top, bottom } = isPage ? { top: 0, bottom: window.innerHeight } : scroller.getBoundingClientRect()
  const rows = list.getBoundingClientRect()
  const isOverRows = rows.left < x && x < rows.right && rows.top < y && y < rows.bottom
  const isCovered = isOverRows && !list.contains(document.elementFromPoint(x, y))
  if (y < fromY && (y < top + edgePx || isCovered)) scroller.scrollBy(0, -scrollPx)
  else if (y > fromY && y > Math.min(bottom, window.innerHeight) - edgePx) scroller.scrollBy(0, scrollPx)
}

function scrollerOf(element: HTMLElement): HTMLElement {
  for (let at: HTMLElement | null = element; at; at = at.parentElement) {
    const { overflowY } = getComputedStyle(at)
    if (at.scrollHeight > at.clientHeight && (overflowY === "auto" || overflowY === "scroll")) return at
  }
  return document.documentElement
}
