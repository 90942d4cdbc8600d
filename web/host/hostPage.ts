import { createHash, X509Certificate } from "node:crypto"
import { renderSVG } from "uqr"
import type { Answer, Asked } from "./answer"

/** Where the app is, where this page is, and the certificate that a tablet must trust. */
export type Host = { appAddress: string; pageAddress: string; authority: string }

const style = `
body { max-width: 46rem; margin: 0 auto; padding: 1.5rem; font: 18px/1.45 system-ui, sans-serif; color: #1f1b17; background: #fbf8f2 }
section { display: grid; grid-template-columns: 13rem 1fr; gap: 0 2rem; padding: 1.2rem 0; border-top: 1px solid #d9cfbf }
h1 { font-size: 1.9rem } h2 { grid-column: 1 / -1; margin: 0 0 .6rem; font-size: 1.3rem }
svg { width: 13rem; height: 13rem } a { color: #a8321a } p { margin: 0 0 .7rem }
code { font: 600 .95rem/1.6 ui-monospace, monospace; overflow-wrap: anywhere }
@media (max-width: 600px) { section { grid-template-columns: 1fr } }
`

const certificateName = "partline.crt"

/** The SHA-256 of a certificate as systems show it. */
export const fingerprint = (pem: string) => new X509Certificate(pem).fingerprint256

/** What the page beside the app answers: the page itself, and the certificate to take. */
export function answerFromPage({ url }: Asked, host: Host): Answer {
  const { pathname } = new URL(url, "http://host")
  if (pathname === "/") return answered("text/html; charset=utf-8", pageText(host))
  if (pathname === `/${certificateName}`)
    return answered("application/x-x509-ca-cert", new X509Certificate(host.authority).raw)
  return { ...answered("text/plain; charset=utf-8", "Not found"), status: 404 }
}

const answered = (type: string, body: Buffer | string): Answer => ({
  status: 200,
  headers: { "Content-Type": type, "Cache-Control": "no-store", "Content-Security-Policy": pagePolicy },
  body,
})

const styleHash = createHash("sha256").update(style).digest("base64")
const pagePolicy = `default-src 'none'; style-src 'sha256-${styleHash}'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'`

const qr = (address: string) => renderSVG(address, { ecc: "M", border: 4 })

const pageText = ({ appAddress, pageAddress, authority }: Host) => `<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>Partline on a tablet</title><style>${style}</style></head>
<body>
<h1>Partline on a tablet</h1>
<p>Tablet and computer must be in the same network. Scan each square with the tablet’s camera.</p>
<section>
<h2>1. Once: let the tablet trust this computer</h2>
${qr(pageAddress)}
<div>
<p>On the tablet this page opens: <a href="${pageAddress}">${pageAddress}</a>. Take <a href="/${certificateName}">the certificate</a> there.</p>
<p><b>iPad, iPhone</b> (in Safari): Allow. Settings, General, VPN &amp; Device Management: install the profile. Then Settings, General, About, Certificate Trust Settings: switch it on.</p>
<p><b>Android</b>: Settings, Security, Encryption &amp; credentials, Install a certificate, CA certificate.</p>
<p>Trust it only if its SHA-256 is the one that the computer’s own window shows:<br><code>${fingerprint(authority)}</code></p>
<p>It stands for this computer alone: the key that signed it has been thrown away. Remove it from the tablet once you no longer need it.</p>
</div>
</section>
<section>
<h2>2. Open Partline</h2>
${qr(appAddress)}
<div>
<p><a href="${appAddress}">${appAddress}</a></p>
<p>Then <b>Share, Add to Home Screen</b> (iPad) or <b>Install app</b> (Android). From then on Partline opens without a network, and without this computer.</p>
<p>Plans stay on the tablet they were drawn on.</p>
</div>
</section>
</body>
</html>
`
