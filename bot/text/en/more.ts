import type { MoreText } from '../more-text.ts'

/** Around what stands deeper in a reply. */
export const moreText: MoreText = {
  hint: () => 'More: more',
  button: () => 'More',
  again: () => 'I worked this out again just now.',
  moved_on: () => 'Things have moved on since. This is how it stands now.',
  nothing: () => 'That was everything.',
  headings: {
    in_jar: () => 'In the jar',
    sweetening: () => 'Straining and sweetening',
    safety: () => 'To be safe',
  },
}
