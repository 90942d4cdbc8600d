import { letters } from "../fields/limits"
import { nameWithin } from "../fields/nameWithin"
import { csvRows } from "../text/csvRows"
import { plainLetters } from "../text/plainLetters"
import { separatorOf } from "../text/separatorOf"

/** A row of a list of clients. */
export type NamedClient = { name: string; phone: string; note: string }

/** What a list of clients holds: those to be added, and how many rows are left out and why. */
export type ReadNames = {
  clients: readonly NamedClient[]
  /** Here already, or twice in the list: by name, and by phone where both give one. */
  known: number
  empty: number
  /** Longer than a card has room for, or with signs that no name has. */
  unfit: readonly number[]
  /** The rows after the most that are taken in at once. */
  left: number
}

export const mostNames = 5000
/** Nothing of a larger file is read. */
export const mostNamesMb = 5

/** Headings as spreadsheets of the five languages write them; a list without any has the name in its first column. */
const headings: Readonly<Record<keyof NamedClient, readonly string[]>> = {
  name: [
    "name",
    "client",
    "nombre",
    "cliente",
    "nom",
    "cliente/o",
    "kunde",
    "kundin",
    "gast",
    "імʼя",
    "імя",
    "імя клієнта",
    "клієнт",
  ],
  phone: ["phone", "telephone", "mobile", "telefono", "movil", "portable", "telefon", "handy", "телефон"],
  note: ["note", "notes", "nota", "notas", "remarque", "notiz", "notizen", "нотатка", "нотатки"],
}

/** Reads names, one a line, or a table with a heading; cells are parted by comma, semicolon or tab. */
export function readNames(text: string, here: readonly { name: string; phone: string }[]): ReadNames {
  const rows = csvRows(text, separatorOf(text)).map(({ cells }) => cells)
  const columns = columnsOf(rows[0] ?? [])
  const body = columns ? rows.slice(1) : rows
  const place = columns ?? { name: 0, phone: 1, note: 2 }
  const first = columns ? 2 : 1
  const known = new Set(here.map(keyOf))
  const found = { clients: [] as NamedClient[], known: 0, empty: 0, unfit: [] as number[] }
  const taken = body.slice(0, mostNames)
  for (const [i, cells] of taken.entries()) {
    const cell = (column: keyof NamedClient) => cells[place[column] ?? -1] ?? ""
    const client = { name: cell("name"), phone: cell("phone"), note: cell("note") }
    if (client.name === "") found.empty++
    else if (!fits(client)) found.unfit.push(first + i)
    else if (known.has(keyOf(client))) found.known++
    else {
      known.add(keyOf(client))
      found.clients.push(client)
    }
  }
  return { ...found, left: body.length - taken.length }
}

const keyOf = ({ name, phone }: { name: string; phone: string }) =>
  `${plainLetters(name)} ${phone.replace(/\D/g, "")}`

const fits = ({ name, phone, note }: NamedClient) =>
  nameWithin(name, (whole) => whole) === name &&
  !control.test(`${name}${phone}`) &&
  phone.length <= letters.name &&
  note.length <= letters.note &&
  !control.test(note.replaceAll("\n", ""))

const control = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]/u

type Columns = Partial<Record<keyof NamedClient, number>>

function columnsOf(heading: readonly string[]): Columns | null {
  const plain = heading.map((cell) => plainLetters(cell).replace(/['’ʼ]/g, "ʼ"))
  const find = (column: keyof NamedClient) => {
    const at = plain.findIndex(
      (cell) => headings[column].includes(cell) || headings[column].includes(cell.replaceAll("ʼ", "")),
    )
    return at < 0 ? {} : { [column]: at }
  }
  const columns: Columns = { ...find("name"), ...find("phone"), ...find("note") }
  return columns.name === undefined ? null : columns
}
