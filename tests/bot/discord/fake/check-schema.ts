import type { ZodMiniType } from 'zod/mini'
import { isRecord, type Json } from './json.ts'
import { type Problem, problem } from './problem.ts'

interface Issue {
  readonly code: string
  readonly path: readonly PropertyKey[]
  readonly message: string
  readonly errors?: readonly (readonly Issue[])[]
}

const steps = (path: readonly PropertyKey[]): Problem['path'] =>
  path.map((step) => (typeof step === 'number' ? step : String(step)))

/** Of the members of a union, the one whose `type` was the payload's, else the one that came furthest. */
const nearestMember = (members: readonly (readonly Issue[])[]): readonly Issue[] => {
  const strangeness = (issues: readonly Issue[]): number =>
    issues.length +
    (issues.some(({ path }) => path.length === 0 || (path.length === 1 && path[0] === 'type')) ? 1000 : 0)
  return members.reduce((best, member) => (strangeness(member) < strangeness(best) ? member : best), members[0] ?? [])
}

const flatten = (issues: readonly Issue[], at: readonly PropertyKey[] = []): readonly Problem[] =>
  issues.flatMap((issue) => {
    const path = [...at, ...issue.path]
    const inner = issue.code === 'invalid_union' ? flatten(nearestMember(issue.errors ?? []), path) : []
    return inner.length > 0 ? inner : [problem(steps(path), issue.message)]
  })

/** Keys of what was sent that the schema has dropped because it does not know them. */
const unknownKeys = (sent: unknown, parsed: unknown, path: Problem['path'] = []): readonly Problem[] => {
  if (Array.isArray(sent) && Array.isArray(parsed))
    return sent.flatMap((item, index) => unknownKeys(item, parsed[index], [...path, index]))
  if (!isRecord(sent) || !isRecord(parsed)) return []
  return Object.keys(sent).flatMap((key) =>
    Object.hasOwn(parsed, key)
      ? unknownKeys(sent[key], parsed[key], [...path, key])
      : [problem([...path, key], 'is not a key of the published description')],
  )
}

/** What Discord's published description finds wrong with a value. */
export const checkSchema = (schema: ZodMiniType, sent: unknown, at: Problem['path'] = []): readonly Problem[] => {
  const { success, data, error } = schema.safeParse(sent)
  const found = success ? unknownKeys(sent, data) : flatten(error.issues as unknown as readonly Issue[])
  return found.map(({ path, message }) => problem([...at, ...path], message))
}

/**
 * discord.js sends these with every message, also where the description has no such key. False, they ask for nothing, so
 * they are let through; true, they stay and are a problem.
 */
export const withoutEmptyExtras = (body: Json): Json =>
  Object.fromEntries(
    Object.entries(body).filter(([key, value]) => !(['tts', 'enforce_nonce'].includes(key) && value === false)),
  )
