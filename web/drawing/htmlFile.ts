import { escaped } from "./escaped"

/** Turned writing and what cannot be seen: neither belongs on a page that others open. */
const turning = /[\u202a-\u202e\u2066-\u2069]|\p{Cc}/gu

/** Words of a plan or of the product as they may stand in a page, between tags and between quotation marks. */
export const markup = (text: string) => escaped(text.replace(/\s/g, " ").replace(turning, ""))

/** Nothing from anywhere, no script, and no form: what stands in the file is all there is. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'"

const style = `
:root { color-scheme: light; font: 1.125rem/1.5 system-ui, sans-serif; color: #1f1b17; background: #ffffff; }
body { margin: 0; overflow-wrap: anywhere; }
main { max-inline-size: 40rem; margin-inline: auto; padding: 1rem 1.125rem 3rem; }
h1 { margin: 0; font-size: 1.75rem; line-height: 1.2; }
h2 { margin: 0 0 0.5rem; font-size: 1.375rem; line-height: 1.25; }
header { padding-block-end: 0.75rem; border-block-end: 3px solid; }
header p { margin: 0.25rem 0 0; }
section { padding-block: 1.25rem; border-block-end: 1px solid #8f887c; }
section p { margin: 0 0 0.5rem; }
section:last-child { border: 0; }
dl { margin: 0; }
dt { font-weight: 600; }
dd { margin: 0 0 0.625rem; }
figure { max-inline-size: 16rem; margin: 1rem auto 0; text-align: center; }
svg { display: block; inline-size: 100%; block-size: auto; }
@media print { section { break-inside: avoid; } }
`

/** A whole page in one file; `title` is what its window is called, `main` is markup. */
export const htmlFile = ({
  language,
  title,
  main,
}: {
  language: string
  title: string
  main: string
}) => `<!doctype html>
<html lang="${markup(language)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${markup(title)}</title>
<style>${style}</style>
</head>
<body>
<main>
${main}
</main>
</body>
</html>
`
