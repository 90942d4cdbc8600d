import type { Tag } from "./page"

/** What the library keeps for its own plug-ins, as far as tags need it. */
export type PdfInternal = {
  write(...words: unknown[]): void
  events: { subscribe(topic: string, listener: (data: never) => void): void }
  newObjectDeferred(): number
  newObjectDeferredBegin(id: number, doOutput?: boolean): void
  getCurrentPageInfo(): { pageNumber: number }
  getPageInfo(page: number): { objId: number }
}

/** One thing that is read: what it is, and its marks in the content of its page. */
type Element = { tag: Tag; page: number; marks: number[] }
type Ids = { tree: number; document: number; parents: number; each: number[] }

/** Tags for a library that has none: marked content in the pages, and the tree that says what each mark is. */
export function tagsOf(internal: PdfInternal) {
  const { write, events } = internal
  const elements: Element[] = []
  /** The element that each mark of a page belongs to, in the order of the marks. */
  const owners = new Map<number, Element[]>()
  let open: Tag | "artifact" | null = null
  let ids: Ids | null = null

  events.subscribe("putPage", ((data: { pageNumber: number }) => {
    write(`/StructParents ${data.pageNumber - 1} /Tabs /S`)
  }) as never)
  events.subscribe("postPutAdditionalObjects", (() => {
    ids = putTree(internal, elements, owners)
  }) as never)
  events.subscribe("putCatalog", (() => {
    if (ids) write(`/StructTreeRoot ${ids.tree} 0 R /MarkInfo << /Marked true >>`)
  }) as never)

  const close = () => {
    if (open) write("EMC")
    open = null
  }
  return {
    close,
    /** What is drawn from here on belongs to a tag; null is ornament that a reader's program passes over. */
    mark(tag: Tag | null) {
      const next = tag ?? "artifact"
      if (next === open) return
      close()
      open = next
      if (!tag) return write("/Artifact BMC")
      const page = internal.getCurrentPageInfo().pageNumber
      const known = elements.find((each) => each.tag === tag && each.page === page)
      const element = known ?? { tag, page, marks: [] }
      if (!known) elements.push(element)
      const onPage = owners.get(page) ?? []
      owners.set(page, onPage)
      write(`/${tag.role} << /MCID ${onPage.length} >> BDC`)
      element.marks.push(onPage.length)
      onPage.push(element)
    },
  }
}

/** The tree of what is read, in its order, and the way back from each mark to it. */
function putTree(
  internal: PdfInternal,
  elements: readonly Element[],
  owners: ReadonlyMap<number, Element[]>,
): Ids {
  const [tree, document, parents] = [0, 0, 0].map(() => internal.newObjectDeferred())
  const each = elements.map(() => internal.newObjectDeferred())
  const idOf = new Map(elements.map((element, i) => [element, each[i]]))
  const put = (id: number, text: string) => {
    internal.newObjectDeferredBegin(id, true)
    internal.write(text)
    internal.write("endobj")
  }
  const refs = (list: readonly number[]) => list.map((id) => `${id} 0 R`).join(" ")
  put(
    tree,
    `<< /Type /StructTreeRoot /K [${document} 0 R] /ParentTree ${parents} 0 R /ParentTreeNextKey ${owners.size} >>`,
  )
  put(document, `<< /Type /StructElem /S /Document /P ${tree} 0 R /K [${refs(each)}] >>`)
  const numbers = [...owners]
    .sort(([one], [other]) => one - other)
    .map(([page, list]) => `${page - 1} [${refs(list.map((owner) => idOf.get(owner) ?? 0))}]`)
  put(parents, `<< /Nums [${numbers.join(" ")}] >>`)
  for (const [i, { tag, page, marks }] of elements.entries()) {
    const alt = tag.alt ? ` /Alt ${unicode(tag.alt)}` : ""
    put(
      each[i],
      `<< /Type /StructElem /S /${tag.role}${alt} /P ${document} 0 R /Pg ${internal.getPageInfo(page).objId} 0 R /K [${marks.join(" ")}] >>`,
    )
  }
  return { tree, document, parents, each }
}

/** Words as a PDF holds any script: UTF-16, the higher byte first. */
const unicode = (text: string) =>
  `<FEFF${Array.from({ length: text.length }, (_, i) => text.charCodeAt(i).toString(16).padStart(4, "0")).join("")}>`
