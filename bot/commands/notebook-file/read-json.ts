import { ChatError } from '../../chat/chat-error.ts'
import type { GivenFile } from '../../chat/given-file.ts'
import type { FileProblems } from '../../text/messages/file-problems.ts'

const MOST_DEPTH = 20

const wrong = (name: string, why: FileProblems['import_no_notebook']['why']): ChatError =>
  new ChatError('bad_value', 'import_no_notebook', { name, why })

/** How deep brackets are nested, those in texts not counted. */
function depthOf(text: string): number {
  let [depth, deepest, isQuoted] = [0, 0, false]
  for (let at = 0; at < text.length; at++) {
    const sign = text[at]
    if (isQuoted) {
      if (sign === '\\') at++
      else if (sign === '"') isQuoted = false
    } else if (sign === '"') isQuoted = true
    else if (sign === '[' || sign === '{') deepest = Math.max(deepest, ++depth)
    else if (sign === ']' || sign === '}') depth--
  }
  return deepest
}

/** What a file of JSON holds, of a depth that is looked at before it is read. Throws `import_no_notebook`. */
export function readJson({ name, bytes }: GivenFile): unknown {
  let text: string
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    throw wrong(name, 'no_text')
  }
  if (depthOf(text) > MOST_DEPTH) throw wrong(name, 'deep')
  try {
    return JSON.parse(text)
  } catch {
    throw wrong(name, 'no_json')
  }
}
