import { checkComponents } from './check-components.ts'
import { attachmentNames, type ComponentNode } from './component-node.ts'
import { isRecord, type Json, type Upload } from './json.ts'
import { type Problem, problem, repeated } from './problem.ts'

const EPHEMERAL = 1 << 6
export const COMPONENTS_V2 = 1 << 15

const MOST_CONTENT = 2000
const MOST_EMBED_TEXT = 6000
const MOST_FILE_BYTES = 10 * 1024 * 1024

export interface MessageRules {
  /** Whether it changes a message that is there; then what is left out stays as it was. */
  readonly isEdit?: boolean
  /** Whether it may be shown to one person only. */
  readonly mayBePrivate?: boolean
  /** Whether the message changed has the flag already, which cannot be taken back. */
  readonly isV2?: boolean
  /** Names of the files that a message that is changed keeps; while they are not known, every name is believed. */
  readonly keeps?: readonly string[]
}

const isFilled = (value: unknown): boolean => (Array.isArray(value) || typeof value === 'string') && value.length > 0

const embedText = (embeds: unknown): number => {
  if (typeof embeds === 'string') return embeds.length
  if (Array.isArray(embeds)) return embeds.reduce((sum: number, embed) => sum + embedText(embed), 0)
  if (!isRecord(embeds)) return 0
  const texts = ['title', 'description', 'name', 'value', 'text', 'fields', 'footer', 'author']
  return texts.reduce((sum, key) => sum + embedText(embeds[key]), 0)
}

const checkMentions = ({ allowed_mentions: allowed }: Json): readonly Problem[] => {
  if (!isRecord(allowed))
    return [problem(['allowed_mentions'], 'is missing: everybody named in the text would be pinged')]
  return isFilled(allowed.parse)
    ? [problem(['allowed_mentions', 'parse'], 'must be empty; people are named one by one')]
    : []
}

const checkV2 = (body: Json): readonly Problem[] =>
  ['content', 'embeds', 'poll', 'sticker_ids']
    .filter((key) => isFilled(body[key]) || isRecord(body[key]))
    .map((key) => problem([key], 'cannot be used with IS_COMPONENTS_V2'))

const checkFiles = (
  body: Json,
  files: readonly Upload[],
  isV2: boolean,
  { isEdit, keeps }: MessageRules,
): readonly Problem[] => {
  const listed = (Array.isArray(body.attachments) ? (body.attachments as readonly Json[]) : []).map(({ id }) => id)
  const names = files.map(({ name }) => name)
  const shown = attachmentNames([body.components, body.embeds])
  const isBelieved = isEdit && keeps === undefined
  const missing = isBelieved ? [] : shown.filter((name) => !names.includes(name) && !keeps?.includes(name))
  const at = (message: string): Problem => problem(['attachments'], message)
  return [
    ...files.filter(({ index }) => !listed.includes(index)).map(({ name }) => at(`the file ${name} is not listed`)),
    ...missing.map((name) => at(`attachment://${name} was not sent`)),
    ...(isV2 ? names.filter((name) => !shown.includes(name)) : []).map((name) => at(`${name} would not be shown`)),
    ...repeated(names).map((name) => at(`two files are called ${name}`)),
    ...(files.length > 10 ? [at('more than 10 files')] : []),
    ...files.filter(({ bytes }) => bytes.length > MOST_FILE_BYTES).map(({ name }) => at(`${name} is above 10 MiB`)),
  ]
}

/** What the published description does not say about a message that is sent or changed. */
export const checkMessage = (body: Json, files: readonly Upload[], rules: MessageRules = {}): readonly Problem[] => {
  const flags = typeof body.flags === 'number' ? body.flags : 0
  const isV2 = rules.isV2 === true || (flags & COMPONENTS_V2) !== 0
  const holds = ['content', 'embeds', 'components', 'attachments', 'sticker_ids'].some((key) => isFilled(body[key]))
  const content = typeof body.content === 'string' ? body.content.length : 0
  return [
    ...(holds || files.length > 0 ? checkMentions(body) : []),
    ...(holds || files.length > 0 || rules.isEdit || isRecord(body.poll) ? [] : [problem([], 'an empty message')]),
    ...(content > MOST_CONTENT ? [problem(['content'], `${content} characters; 2000 are allowed`)] : []),
    ...(embedText(body.embeds) > MOST_EMBED_TEXT ? [problem(['embeds'], 'more than 6000 characters in all')] : []),
    ...(isV2 ? checkV2(body) : []),
    ...(flags & EPHEMERAL && !rules.mayBePrivate ? [problem(['flags'], 'only an answer can be ephemeral')] : []),
    ...(Array.isArray(body.components) ? checkComponents(body.components as readonly ComponentNode[], isV2) : []),
    ...checkFiles(body, files, isV2, rules),
  ]
}
