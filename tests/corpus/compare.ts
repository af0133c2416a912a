/**
 * Plays `sessions/*.txt` with this tree and with another one, and tells where they differ:
 *
 *     npm run compare -- /path/of/another/tree [options]
 *
 *     --on text80,json      only these of text80, text44, json, discord, kept, keptInDiscord
 *     --facts               data, and the keys of notes, cautions and errors, without their wording (of json and kept alone)
 *     --show 20             how many differences are printed; 10 when left out
 *     --session NAME        only sessions whose name holds this
 *
 * A session is a list of lines that begins with an empty folder: `@ 2026-12-09 09:30` sets the clock (UTC), `~` starts the
 * bot anew so that it says what is due, `! press Shaken` acts on a message in Discord, everything else is typed. It is played
 * at the terminal 80 and 44 columns wide, by `ask --json`, and, where its head says so, in the Discord of
 * `tests/bot/discord/fake`; what is kept at the end is compared as well. Each tree is played as `bot/start.cjs` bundles it,
 * with a clock and ids of ours, so files may lie elsewhere in it. Texts are compared byte for byte, numbers to 1e-12 of their
 * size. What was played is kept in the system's temporary folder, by the bundle it was played with. The exit code is 1 where
 * something differs.
 */
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { existsSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { bundleOf, hashOf } from './bot-loaded.ts'
import { type Difference, differences, lineDifferences } from './differences.ts'
import { type Played, SURFACES, type Surface } from './played.ts'
import { readSessions } from './sessions.ts'

const HERE = import.meta.dirname
const OWN_TREE = resolve(HERE, '..', '..')
const WORKERS = 2
const SHOWN_CHARACTERS = 300

const { values: options, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    on: { type: 'string', default: SURFACES.join(',') },
    facts: { type: 'boolean', default: false },
    show: { type: 'string', default: '10' },
    session: { type: 'string', default: '' },
  },
})
const [otherTree] = positionals
if (otherTree === undefined) {
  process.stderr.write('Say which tree to compare with: npm run compare -- /path/of/another/tree\n')
  process.exit(2)
}

const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .toSorted()

const played = async (tree: string): Promise<Readonly<Record<string, Played>>> => {
  const bundle = bundleOf(tree)
  const parts = [bundle, ...filesIn(HERE).filter((path) => !/(compare|differences)\.ts$/.test(path))]
  const kept = join(tmpdir(), `larderbell-played-${hashOf(...parts.map((path) => readFileSync(path)))}.json`)
  if (!existsSync(kept)) {
    process.stderr.write(`playing ${tree} …\n`)
    const outs = await Promise.all(
      Array.from({ length: WORKERS }, async (_, from) => {
        const out = `${kept}.${process.pid}.${from}`
        const argv = ['--import', 'tsx', join(HERE, 'play.ts'), bundle, out, String(from), String(WORKERS)]
        const child = spawn(process.execPath, argv, { cwd: OWN_TREE, stdio: 'inherit' })
        const [code] = await once(child, 'exit')
        if (code !== 0) throw new Error(`playing ${tree} ended with ${code}`)
        const part = JSON.parse(readFileSync(out, 'utf8'))
        rmSync(out)
        return part
      }),
    )
    const whole = `${kept}.${process.pid}`
    writeFileSync(whole, JSON.stringify(Object.assign({}, ...outs)))
    renameSync(whole, kept)
  }
  return JSON.parse(readFileSync(kept, 'utf8'))
}

/** Without wording: texts of notes and cautions, and the messages of errors. */
const factsOf = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(factsOf)
  if (typeof value !== 'object' || value === null) return value
  const kept = Object.entries(value).filter(([key]) => key !== 'text' && key !== 'message')
  return Object.fromEntries(kept.map(([key, inner]) => [key, factsOf(inner)]))
}

const written = (value: unknown): string => {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? 'nothing')
  return text.length > SHOWN_CHARACTERS ? `${text.slice(0, SHOWN_CHARACTERS)}…` : text
}

const told = ({ path, before, after }: Difference): readonly string[] => {
  if (typeof before === 'string' && typeof after === 'string') {
    return [...(path === '' ? [] : [`  ${path}`]), ...lineDifferences(before, after).map((line) => `  ${line}`)]
  }
  return [`  ${path}`, `  - ${written(before)}`, `  + ${written(after)}`]
}

const surfaces = options.on.split(',') as readonly Surface[]
const sessions = readSessions().filter(({ name }) => name.includes(options.session))
const [before, after] = [await played(resolve(otherTree)), await played(OWN_TREE)]
const counts = new Map<string, number>()
let [compared, differing] = [0, 0]
for (const session of sessions) {
  const typed = new Map(
    session.steps.map(({ lineNumber, step }) => [lineNumber, 'line' in step ? step.line : step.kind]),
  )
  for (const surface of surfaces.filter((one) => !options.facts || one === 'json' || one.startsWith('kept'))) {
    const [one, other] = [before[session.name]![surface], after[session.name]![surface]]
    for (const number of new Set([...Object.keys(one), ...Object.keys(other)].map(Number))) {
      compared++
      const [was, is] = options.facts ? [factsOf(one[number]), factsOf(other[number])] : [one[number], other[number]]
      const found = differences(was, is)
      if (found.length === 0) continue
      differing++
      counts.set(surface, (counts.get(surface) ?? 0) + 1)
      if (differing > Number(options.show)) continue
      const at = number === 0 ? 'at the end' : `line ${number}: ${typed.get(number)}`
      process.stdout.write(`\n${surface}, ${session.file}, ${session.name}, ${at}\n`)
      process.stdout.write(`${found.flatMap(told).slice(0, 40).join('\n')}\n`)
    }
  }
}
const each = [...counts].map(([surface, count]) => `${surface} ${count}`).join(', ')
process.stdout.write(`\n${compared} answers compared, ${differing} differ${each === '' ? '' : `: ${each}`}\n`)
process.exit(differing > 0 ? 1 : 0)
