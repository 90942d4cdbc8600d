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

/** One thing that is read: what it is, and what it holds: its marks in the content of its page, and letters that are pictures. */
type Element = {
  role: Tag["role"] | "Span"
  alt?: string | undefined
  spoken?: string
  page: number
  kids: Kid[]
}
type Kid = number | Element
type Ids = { tree: number; document: number; parents: number }

/** Tags for a library that has none: marked content in the pages, and the tree that says what each mark is. */
export function tagsOf(internal: PdfInternal) {
  const { write, events } = internal
  const elements: Element[] = []
  /** The elements of a tag, one a page. */
  const known = new Map<Tag, Element[]>()
  /** The element that each mark of a page belongs to, in the order of the marks. */
  const owners = new Map<number, Element[]>()
  let open: Element | "artifact" | null = null
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
  const elementOf = (tag: Tag, page: number): Element => {
    const own = known.get(tag) ?? []
    const found = own.find((each) => each.page === page)
    if (found) return found
    const element: Element = { role: tag.role, alt: tag.alt, page, kids: [] }
    known.set(tag, [...own, element])
    elements.push(element)
    return element
  }
  const begin = (element: Element) => {
    const onPage = owners.get(element.page) ?? []
    owners.set(element.page, onPage)
    write(`/${element.role} << /MCID ${onPage.length}${actualText(element)} >> BDC`)
    element.kids.push(onPage.length)
    onPage.push(element)
  }
  return {
    close,
    /**
     * What is drawn from here on belongs to a tag; null is ornament that a reader's program passes over.
     * Letters drawn as a picture are a part of it for themselves, and `spoken` says them.
     */
    mark(tag: Tag | null, spoken?: string) {
      const { pageNumber: page } = internal.getCurrentPageInfo()
      const whole = tag && elementOf(tag, page)
      if ((whole ?? "artifact") === open && spoken === undefined) return
      close()
      open = whole ?? "artifact"
      if (!whole) return write("/Artifact BMC")
      if (spoken === undefined) return begin(whole)
      const part: Element = { role: "Span", spoken, page, kids: [] }
      whole.kids.push(part)
      open = part
      begin(part)
    },
  }
}

const actualText = ({ spoken }: Element) => (spoken === undefined ? "" : ` /ActualText ${unicode(spoken)}`)

/** The tree of what is read, in its order, and the way back from each mark to it. */
function putTree(
  internal: PdfInternal,
  elements: readonly Element[],
  owners: ReadonlyMap<number, Element[]>,
): Ids {
  const [tree, document, parents] = [0, 0, 0].map(() => internal.newObjectDeferred())
  const idOf = new Map<Element, number>()
  const number = (element: Element) => {
    idOf.set(element, internal.newObjectDeferred())
    for (const kid of element.kids) if (typeof kid === "object") number(kid)
  }
  for (const element of elements) number(element)
  const put = (id: number, text: string) => {
    internal.newObjectDeferredBegin(id, true)
    internal.write(text)
    internal.write("endobj")
  }
  const refs = (list: readonly Kid[]) =>
    list.map((kid) => (typeof kid === "number" ? kid : `${idOf.get(kid) ?? 0} 0 R`)).join(" ")
  put(
    tree,
    `<< /Type /StructTreeRoot /K [${document} 0 R] /ParentTree ${parents} 0 R /ParentTreeNextKey ${owners.size} >>`,
  )
  put(document, `<< /Type /StructElem /S /Document /P ${tree} 0 R /K [${refs(elements)}] >>`)
  const numbers = [...owners]
    .sort(([one], [other]) => one - other)
    .map(([page, list]) => `${page - 1} [${refs(list)}]`)
  put(parents, `<< /Nums [${numbers.join(" ")}] >>`)
  const putElement = (element: Element, parent: number) => {
    const id = idOf.get(element) ?? 0
    const { role, alt, page, kids } = element
    const said = `${alt ? ` /Alt ${unicode(alt)}` : ""}${actualText(element)}`
    put(
      id,
      `<< /Type /StructElem /S /${role}${said} /P ${parent} 0 R /Pg ${internal.getPageInfo(page).objId} 0 R /K [${refs(kids)}] >>`,
    )
    for (const kid of kids) if (typeof kid === "object") putElement(kid, id)
  }
  for (const element of elements) putElement(element, document)
  return { tree, document, parents }
}

/** Words as a PDF holds any script: UTF-16, the higher byte first. */
const unicode = (text: string) =>
  `<FEFF${Array.from({ length: text.length }, (_, i) => text.charCodeAt(i).toString(16).padStart(4, "0")).join("")}>`
