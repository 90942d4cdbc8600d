import type { Plan } from "../document/schema"

/** A file name that every system takes, such as "soft-face-frame-2026-03-09.partline.json". */
export const fileName = ({ name, date }: Pick<Plan, "name" | "date">, ending: string) =>
  `${fileStem(name, "plan")}-${date}.${ending}`

/** A name as the beginning of a file name; `nameless` when nothing of it can stand there. */
export function fileStem(name: string, nameless: string): string {
  const words = name
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, "-")
  const short = [...words]
    .slice(0, 60)
    .join("")
    .replace(/^-+|-+$/g, "")
  return short || nameless
}
