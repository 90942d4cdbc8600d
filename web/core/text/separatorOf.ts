/** What parts the cells of the first line of a table most often: comma, semicolon or tab. */
export function separatorOf(text: string): string {
  const line = text.slice(0, text.search(/[\r\n]|$/))
  const countIn = (sign: string) => line.split(sign).length - 1
  return [",", ";", "\t"].toSorted((a, b) => countIn(b) - countIn(a))[0]
}
