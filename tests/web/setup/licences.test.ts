import { readFileSync } from "node:fs"
import { resolve } from "node:path"
import { expect, it } from "vitest"
import { licencesText } from "../../../web/setup/licences"

const module = (path: string) => resolve("node_modules", path)

it("has the whole licence text of every package that a file is from, once", () => {
  const text = licencesText([
    module("react/index.js"),
    module("react/jsx-runtime.js"),
    `${module("konva/lib/index.js")}?commonjs`,
    resolve("web/main.tsx"),
  ])
  for (const name of ["react", "konva"])
    expect(text.split(readFileSync(module(`${name}/LICENSE`), "utf8").trim())).toHaveLength(2)
  expect(text).not.toContain("zustand")
})

it("has our own licence and that of the fonts, on screen and on paper", () => {
  const text = licencesText([
    module("@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2"),
  ])
  expect(text).toContain(readFileSync("LICENSE", "utf8").trim())
  expect(text.match(/SIL OPEN FONT LICENSE Version 1\.1/g)?.length).toBeGreaterThanOrEqual(2)
})

it("keeps what a package says of the parts it took in from others", () => {
  expect(licencesText([module("jspdf/dist/jspdf.es.js")])).toContain(
    "Copyright (c) 2008, Adobe Systems Incorporated",
  )
})
