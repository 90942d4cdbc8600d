import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs"

/** All words of a PDF, page after page, as a reader program finds them. */
export async function readPdfText(bytes: Uint8Array): Promise<string> {
  const file = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise
  const pages: string[] = []
  for (let number = 1; number <= file.numPages; number++) {
    const { items } = await (await file.getPage(number)).getTextContent()
    pages.push(items.map((item) => ("str" in item ? item.str : "")).join(" "))
  }
  await file.destroy()
  return pages.join("\n")
}
