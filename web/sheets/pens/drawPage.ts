import type { Item, Page } from "./page"
import type { Pen } from "./pen"

/** Draw a page with a pen, first item lowest. */
export function drawPage(page: Page, pen: Pen): void {
  for (const item of page.items) {
    pen.mark?.(item.tag ?? (isRead(item) ? { role: "P" } : null), item.kind === "run" ? item.text : undefined)
    drawItem(item, pen)
  }
}

const isRead = ({ kind }: Item) => kind === "text" || kind === "run"

function drawItem(item: Item, pen: Pen): void {
  switch (item.kind) {
    case "text":
      pen.style({ ink: item.ink, type: item })
      pen.text(item.text, item.at, item.align, item.goesOn)
      break
    case "run":
      pen.run(item)
      break
    case "lines":
      pen.style({ ink: item.ink, line: item })
      pen.path(item.paths, item.closed ? "closed stroke" : "stroke")
      break
    case "area":
      pen.style({ ink: item.ink })
      pen.path([item.path], "fill")
      break
    case "hatch":
      pen.style({ ink: item.ink, line: item })
      pen.path(item.segments, "stroke")
      break
    case "stamp":
      pen.stamp(item, () => {
        for (const part of item.parts) drawItem(part, pen)
      })
      break
    case "clipped":
      pen.save()
      pen.clip(item.path)
      for (const each of item.items) drawItem(each, pen)
      pen.restore()
      break
  }
}
