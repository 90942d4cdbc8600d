/** Letters as they are typed in haste: small, without accents, without the signs between figures of a phone number. */
export const plainLetters = (text: string) =>
  text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/\s{2,}|[^\S ]/gu, " ")
    .trim()
