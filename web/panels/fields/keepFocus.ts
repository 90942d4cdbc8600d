/** Parts of the page that say what they are to one who hears them. */
const parts = "section, fieldset, main, dialog, header, aside"

/**
 * When what has the focus goes, the nearest part around it that is still there takes it; when it is switched off, what it
 * stands in. A hand on keys goes on from there, and not from the top of the page, where a change of screen leaves it.
 */
export function keepFocus(page: Document) {
  let held: Element[] = []
  page.addEventListener("focusin", ({ target }) => {
    held = target instanceof Element ? [target, ...around(target)] : []
  })
  // Taken off by hand, and not by what happened to it.
  page.addEventListener("focusout", () =>
    queueMicrotask(() => {
      if (page.activeElement === page.body && isThere(held[0])) held = []
    }),
  )
  const restore = () => {
    const at = page.activeElement
    if (held.length === 0 || isThere(held[0]) || (at !== page.body && at !== held[0])) return
    const heir = held[0].isConnected ? held[1] : held.find((each) => each.isConnected && each.matches(parts))
    held = []
    if (heir instanceof HTMLElement) take(heir)
  }
  new MutationObserver(restore).observe(page.body, {
    subtree: true,
    childList: true,
    attributeFilter: ["disabled"],
  })
}

const isThere = (element: Element | undefined) =>
  element?.isConnected === true && !element.matches(":disabled")

function around(element: Element): Element[] {
  const { parentElement } = element
  return parentElement ? [parentElement, ...around(parentElement)] : []
}

/** Not a stop of its own: once left it cannot be come to again. */
function take(heir: HTMLElement) {
  const isOwn = heir.hasAttribute("tabindex")
  if (!isOwn) heir.tabIndex = -1
  heir.focus({ preventScroll: true })
  if (!isOwn) heir.addEventListener("blur", () => heir.removeAttribute("tabindex"), { once: true })
}
