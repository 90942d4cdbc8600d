import { relative, resolve } from "node:path"
import type { Plugin } from "vite"

const web = resolve(import.meta.dirname, "..")

/** The parts that come right after the head, by their modules: each is one file, and may fail without the others. */
const soon = {
  startUp: ["startUp.ts", "core/file/exampleVisit.ts", "panels/plans/keepToScale.ts", "afterHands.ts"],
  hands: [
    "canvas/hand/paneGestures.ts",
    "canvas/hand/keyboard.ts",
    "drawing/workingSectionsMarks.ts",
    "drawing/workingTints.ts",
  ],
  bar: [
    "panels/chair/ServiceBar.tsx",
    "panels/plans/KeptStatus.tsx",
    "panels/plans/ExampleStrip.tsx",
    "panels/clearance/ClearancePill.tsx",
    "panels/placement/foot/LiveFigures.tsx",
    "panels/placement/foot/FootMinutes.tsx",
  ],
  list: [
    "panels/placement/FoilPanel.tsx",
    "panels/placement/FoilEditor.tsx",
    "panels/placement/SelectedActions.tsx",
    "panels/placement/HandSwitches.tsx",
    "panels/placement/OverlapList.tsx",
    "panels/placement/SectionNotes.tsx",
    "panels/placement/working/WorkingPart.tsx",
    "panels/placement/techniques/TechniquesPart.tsx",
    "panels/placement/AddByTyping.tsx",
    "panels/placement/ZoneTotals.tsx",
    "panels/placement/techniques/listenToLinks.ts",
  ],
} as const

const soonFiles = ["common", ...Object.keys(soon)]

/** Every file, those that others build upon first. */
const files = ["index", ...soonFiles, "later"]

type Module = { importedIds: readonly string[]; dynamicallyImportedIds: readonly string[] }
type Graph = { getModuleInfo(id: string): Module | null }

/**
 * The files that modules of the build are gathered in: all that the head needs in one, what comes right after it in a few,
 * what later screens share in one. Nobody finds out what is needed next only by reading what has come.
 */
export function fileGroups() {
  let homes: ReadonlyMap<string, string> | null = null
  return files.map((file, i) => ({
    debugName: file,
    priority: files.length - i,
    name: (id: string, graph: Graph) => {
      homes ??= filesOf(graph)
      return homes.get(id) === file ? file : null
    },
  }))
}

/** Names what comes right after the head in the first page, so that it is on its way while the head is read. */
export const preloadSoon = (): Plugin => ({
  name: "preload-soon",
  apply: "build",
  transformIndexHtml: {
    order: "post",
    handler: (_, { bundle = {} }) =>
      Object.values(bundle)
        .filter((part) => part.type === "chunk" && soonFiles.includes(part.name))
        .map(({ fileName }) => ({
          tag: "link",
          attrs: { rel: "modulepreload", crossorigin: "", fetchpriority: "low", href: `./${fileName}` },
          injectTo: "head",
        })),
  },
})

function filesOf(graph: Graph): ReadonlyMap<string, string> {
  const first = reached([resolve(web, "main.tsx")], graph)
  const parts = Object.entries(soon).map(([name, paths]) => {
    const roots = paths.map((path) => resolve(web, path))
    return { name, roots, modules: reached(roots, graph) }
  })
  const known = new Set(parts.flatMap(({ roots }) => roots))
  const later = rootsOf(first, graph).filter((root) => !known.has(root))
  const screens = later.map((root) => reached([root], graph))
  // The words of a language come right after the head too, but those of one alone.
  const said = reached(later.filter(isOfLanguage), graph)
  const fileOf = (id: string) => {
    if (first.has(id)) return "index"
    if (isOfLanguage(id)) return null
    if (said.has(id)) return "common"
    const early = parts.filter(({ modules }) => modules.has(id))
    const late = screens.filter((modules) => modules.has(id))
    if (early.length > 0) return early.length === 1 && late.length === 0 ? early[0].name : "common"
    return late.length > 1 ? "later" : null
  }
  const all = new Set(
    [first, ...parts.map(({ modules }) => modules), ...screens].flatMap((each) => [...each]),
  )
  return new Map([...all].flatMap((id) => [[id, fileOf(id)] as const]).filter(isNamed))
}

const isOfLanguage = (id: string) =>
  /^[a-z]+(-[a-z]+)?\/.+/.test(relative(resolve(web, "words"), id)) && !id.includes("/every/")

const isNamed = (pair: readonly [string, string | null]): pair is readonly [string, string] =>
  pair[1] !== null

/** The modules that these are made of, themselves too. */
function reached(roots: readonly string[], graph: Graph): ReadonlySet<string> {
  const found = new Set(roots)
  for (const id of found) for (const part of infoOf(id, graph).importedIds) found.add(part)
  return found
}

/** All that is loaded by a call, from whatever has been loaded. */
function rootsOf(first: ReadonlySet<string>, graph: Graph): string[] {
  const found = new Set(first)
  const roots = new Set<string>()
  for (const id of found) {
    const { importedIds, dynamicallyImportedIds } = infoOf(id, graph)
    for (const part of dynamicallyImportedIds) if (!first.has(part)) roots.add(part)
    for (const part of [...importedIds, ...dynamicallyImportedIds]) found.add(part)
  }
  return [...roots]
}

function infoOf(id: string, graph: Graph): Module {
  const info = graph.getModuleInfo(id)
  if (!info) throw new Error(`${id} is not in the build`)
  return info
}
