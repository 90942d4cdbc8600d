import { type ScreenName, sessionStore } from "./sessionStore"

const screens: Readonly<Record<ScreenName, string>> = {
  client: "#client",
  placement: "",
  formula: "#formula",
  timing: "#timing",
  chair: "#chair",
  sheets: "#sheets",
}

/** The screen at an address; null for one that is something else, such as a technique's link. */
export const screenAt = (hash: string): ScreenName | null =>
  (Object.keys(screens) as ScreenName[]).find((name) => screens[name] === hash) ?? null

/** Every screen has an address, so that the browser's *Back* leads to the screen before it; the map's is the bare one. */
export function followAddress(page: Window, store = sessionStore): void {
  const { location, history } = page
  const showAddressed = () => {
    const screen = screenAt(location.hash)
    if (screen) store.setState({ screen })
  }
  if (location.hash !== "") showAddressed()
  page.addEventListener("popstate", showAddressed)
  store.subscribe(({ screen }, before) => {
    if (screen !== before.screen && screenAt(location.hash) !== screen)
      history.pushState(null, "", location.pathname + location.search + screens[screen])
  })
}
