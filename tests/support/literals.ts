import { readFileSync } from "node:fs"
import { parseAst } from "vite"

/** A text that a file of words holds. */
export type WrittenText = {
  text: string
  /** Whether it is handed to the tool that spells for a region, there or by the name of its group. */
  isSpelled: boolean
  /** The constants it is written within. */
  within: readonly string[]
}

type Node = { readonly type: string; readonly [field: string]: unknown }

/** The texts of a file of words that are said, not codes, keys or names of files; and what groups it has spelled. */
export function writtenTexts(file: string): { texts: WrittenText[]; spelledGroups: string[] } {
  const texts: WrittenText[] = []
  const spelledGroups: string[] = []
  visit(parseAst(readFileSync(file, "utf8"), { lang: "ts" }) as unknown as Node, {
    isSpelled: false,
    within: [],
  })
  return { texts, spelledGroups }

  function visit(node: Node, context: Omit<WrittenText, "text">): void {
    if (node.type === "ImportDeclaration" || node.type.startsWith("TS") !== isKeptByTypes(node)) return
    const text = textOf(node)
    if (text !== null) texts.push({ text, ...context })
    const isSpelling = isCallOfSpelled(node)
    if (isSpelling) spelledGroups.push(...(node.arguments as Node[]).flatMap(groupsIn))
    const inner = {
      isSpelled: context.isSpelled || isSpelling,
      within:
        node.type === "VariableDeclarator"
          ? [...context.within, ...groupsIn(node.id as Node)]
          : context.within,
    }
    for (const child of saidChildren(node)) visit(child, inner)
  }
}

/** `satisfies` and `as` hold what is said beside a type. */
const isKeptByTypes = ({ type }: Node) => type === "TSSatisfiesExpression" || type === "TSAsExpression"

const textOf = (node: Node): string | null => {
  if (node.type === "Literal") return typeof node.value === "string" ? node.value : null
  return node.type === "TemplateElement" ? (node.value as { cooked: string }).cooked : null
}

const isCallOfSpelled = ({ type, callee }: Node): boolean =>
  type === "CallExpression" && ((callee as Node).property as Node | undefined)?.name === "spelled"

/** What may be said of a node: not what it compares with, nor the keys it looks up or goes by. */
function saidChildren(node: Node): Node[] {
  if (node.type === "BinaryExpression" && /^[!=]==$/.test(String(node.operator))) return []
  const codes = node.type === "MemberExpression" ? ["property"] : node.type === "Property" ? ["key"] : []
  return Object.entries(node)
    .filter(([field]) => !codes.includes(field))
    .flatMap(([, value]) => value)
    .filter(isNode)
}

const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && "type" in value && typeof value.type === "string"

/** The names that an expression is: one, or those that an object is made of by their own name. */
const groupsIn = ({ type, name, properties }: Node): string[] => {
  if (type === "Identifier") return [String(name)]
  const fields = type === "ObjectExpression" ? (properties as Node[]) : []
  return fields.filter(({ shorthand }) => shorthand === true).map(({ key }) => String((key as Node).name))
}
