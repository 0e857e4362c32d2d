/** What is printed once the server listens: two places to go, and nothing else. */

type Facts = { port: number; addresses: readonly string[]; publicUrl: URL | null; linkKey: string | null }

export function whereToGo({ port, addresses, publicUrl, linkKey }: Facts): string {
  const own = publicUrl === null ? `http://localhost:${port}` : publicUrl.origin
  const students = publicUrl === null ? addresses.map((address) => `http://${address}`) : [publicUrl.origin]
  const lines = [
    '',
    '  Fairturn is ready.',
    '',
    `  Your desk (this link works once):  ${own}/desk/enter#${linkKey ?? ''}`,
    `  Your desk from then on:            ${own}/desk`,
    ...students.map(
      (url, index) =>
        `  ${index === 0 ? 'Students go to:                  ' : '  or:                            '}  ${url}`,
    ),
    '',
    '  Stop with Ctrl+C. The next start goes on where this one stood.',
    '',
  ]
  return lines.join('\n')
}
