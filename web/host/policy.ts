/** What a page of the app may load, and from where: itself, and what it makes in its own memory. */
export const contentPolicy = [
  "default-src 'self'",
  "img-src 'self' data: blob:",
  "style-src 'self'",
  "font-src 'self'",
  "worker-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ")

/** The same as a header, with the one thing that a page cannot say of itself: nobody may frame it. */
export const headerPolicy = `${contentPolicy}; frame-ancestors 'none'`
