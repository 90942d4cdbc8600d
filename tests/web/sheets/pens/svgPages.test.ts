import { describe, expect, it } from "vitest"
import { placementMap } from "../../../../web/sheets/map/placementMap"
import { svgPages } from "../../../../web/sheets/pens/svgPages"
import { framePlan, manyPlan } from "../../../support/framePlan"
import { sheetFonts, sheetOptions } from "../../../support/sheetFonts"

const draw = (plan = framePlan) => svgPages(placementMap(plan, sheetOptions(), sheetFonts))

describe("the pages on the screen", () => {
  it("are as many as will be printed, each the size of the paper in mm", () => {
    const pages = draw(manyPlan(60))
    expect(pages.length).toBeGreaterThan(2)
    for (const page of pages) expect(page).toContain(`viewBox="0 0 210 297"`)
  })

  it("show under a policy that forbids inline styles", () => {
    expect(draw()[0]).not.toMatch(/\sstyle=|<style/)
  })

  it("escape what people write", () => {
    const [page] = draw({ ...framePlan, name: `<b onload="x">Tom & Ann</b>` })
    expect(page).toContain("&lt;b onload=&quot;x&quot;&gt;Tom &amp; Ann&lt;/b&gt;")
    expect(page).not.toContain("<b ")
  })
})
