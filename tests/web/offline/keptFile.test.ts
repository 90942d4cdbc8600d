import { expect, it } from "vitest"
import { keptFile } from "../../../web/offline/keptFile"

const base = new URL("https://salon.example/partline/")
const build = {
  id: "a",
  files: [
    ["index.html", "x"],
    ["assets/App-abc.js", "y"],
    ["licences.txt", "z"],
  ] as const,
}
const kept = (url: string, method = "GET") => keptFile({ method, url }, build, base)?.href ?? null

it("keeps the first page under the folder it is asked for by, whatever stands behind it", () => {
  for (const end of ["", "index.html", "?x=1", "#technique=abc"])
    expect(kept(`${base.href}${end}`)).toBe(base.href)
})

it("keeps a file of its build under its own address", () => {
  expect(kept(`${base.href}assets/App-abc.js?v=2`)).toBe(`${base.href}assets/App-abc.js`)
  expect(kept(`${base.href}licences.txt`)).toBe(`${base.href}licences.txt`)
})

it("leaves alone what is of another build, of another place or more than a question", () => {
  expect(kept(`${base.href}assets/App-def.js`)).toBeNull()
  expect(kept(`${base.href}sw.js`)).toBeNull()
  expect(kept("https://salon.example/other/index.html")).toBeNull()
  expect(kept("https://elsewhere.example/partline/")).toBeNull()
  expect(kept(base.href, "POST")).toBeNull()
})

it("takes a path that cannot be read for no file of its own", () => {
  expect(kept(`${base.href}%zz`)).toBeNull()
})
