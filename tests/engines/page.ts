import { type Engine, type Place, until } from "./engine"

/** What a person does on a page, by what stands on it, through any engine. */

/** In the page: what a selector and a name find that can be seen. */
const finder = `
const [selector, name] = arguments
const nameOf = (element) => (element.getAttribute("aria-label") || element.textContent || "").replace(/\\s+/g, " ").trim()
const found = [...document.querySelectorAll(selector)].filter((element) => element.checkVisibility() && new RegExp(name).test(nameOf(element)))[0]
`

/** In the page: the middle of what was found, once it lies on top and no longer moves. */
const placeOfFound = `${finder}
if (!found) return null
found.scrollIntoView({ block: "center", inline: "nearest" })
const { x, y, width, height } = found.getBoundingClientRect()
const at = [Math.round(x + width / 2), Math.round(y + height / 2)]
const top = document.elementFromPoint(...at)
return top && (found.contains(top) || top.contains(found)) && !found.disabled ? at : null
`

/** Whether such a thing stands on the page. */
export const stands = (engine: Engine, selector: string, name = "") =>
  engine.run<boolean>(`${finder} return found !== undefined`, selector, name)

export const waitFor = (engine: Engine, selector: string, name = "") =>
  until(`${engine.name}: ${selector} ${name}`, () => stands(engine, selector, name))

/** In the page: notes when the press has arrived where it was meant. */
const listen = `${finder}
window.isPressed = false
found.addEventListener("click", () => { window.isPressed = true }, { capture: true, once: true })
`

/** Presses what has this name, as soon as it lies still under the pointer; again when it moved away from under it. */
export async function press(engine: Engine, selector: string, name = "") {
  const place = () => engine.run<Place | null>(placeOfFound, selector, name)
  await until(`${engine.name}: to press ${selector} ${name}`, async () => {
    const before = await place()
    const after = await place()
    if (!before || !after || before[0] !== after[0] || before[1] !== after[1]) return false
    await engine.run(listen, selector, name)
    await engine.stroke([after], "mouse")
    return engine.run<boolean>("return window.isPressed !== false")
  })
}

export const count = (engine: Engine, selector: string) =>
  engine.run<number>("return document.querySelectorAll(arguments[0]).length", selector)

export const boxOf = (engine: Engine, selector: string) =>
  engine.run<{ x: number; y: number; width: number; height: number }>(
    "const { x, y, width, height } = document.querySelector(arguments[0]).getBoundingClientRect(); return { x, y, width, height }",
    selector,
  )

/** The words of what is found, one entry each, whatever an engine makes of the space between them. */
export const wordsOf = (engine: Engine, selector: string) =>
  engine.run<string[]>(
    "return [...document.querySelectorAll(arguments[0])].map((each) => each.textContent.replace(/\\s+/g, ' ').trim())",
    selector,
  )

/** The window once its letters are here and two pictures of it are the same. */
export const pictureAtRest = async (engine: Engine) => {
  await until(`${engine.name}: the letters`, () =>
    engine.run<boolean>("return document.fonts.status === 'loaded'"),
  )
  let last = await engine.picture()
  return until(`${engine.name}: a still picture`, async () => {
    const next = await engine.picture()
    const isStill = next.equals(last)
    last = next
    return isStill ? next : null
  })
}
