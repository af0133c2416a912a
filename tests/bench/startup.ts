import { spawn, spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

const root = join(import.meta.dirname, '..', '..')
const TIMES = 9
const TIME_TOOL = '/usr/bin/time'
const LINE = '/mix spirit:1 l strength:95% water:750 ml sugar:500 g'

type Row = [label: string, value: string, goal?: string]

const median = (values: readonly number[]): number => [...values].sort((one, other) => one - other)[values.length >> 1]!

const seconds = (ms: number): string => `${(ms / 1000).toFixed(2)} s`

/** Wall time of a whole process; one that fails spoils the measurement. */
const wallMs = (command: string, argv: readonly string[]): number => {
  const startMs = performance.now()
  const { status, stderr } = spawnSync(command, argv, { cwd: root, encoding: 'utf8' })
  if (status !== 0) throw new Error(`${command} ${argv.join(' ')} ended with ${status}: ${stderr}`)
  return performance.now() - startMs
}

/** The most memory that a process or one of its children held, or null where it cannot be asked. */
const peakMb = (command: string, argv: readonly string[]): number | null => {
  if (!existsSync(TIME_TOOL)) return null
  const { stderr } = spawnSync(TIME_TOOL, ['-f', '%M', command, ...argv], { cwd: root, encoding: 'utf8' })
  const kilobytes = Number(stderr.trim().split('\n').at(-1))
  return Number.isFinite(kilobytes) ? kilobytes / 1024 : null
}

/** From starting `npm start` until the chat has greeted and would read. */
const greetingMs = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const startMs = performance.now()
    const chat = spawn('npm', ['start'], { cwd: root, stdio: ['pipe', 'pipe', 'ignore'] })
    let heardMs: number | null = null
    let text = ''
    chat.stdout.on('data', (piece) => {
      text += piece
      // npm prints the script first; the greeting ends with the line about /quit.
      if (heardMs === null && text.includes('/quit')) {
        heardMs = performance.now() - startMs
        chat.stdin.end()
      }
    })
    chat.on('error', reject)
    chat.on('close', () => (heardMs === null ? reject(new Error('npm start did not greet')) : resolve(heardMs)))
  })

/** What `npm run ask` starts, so that it can be measured without npm. */
const askScript = (): readonly string[] =>
  JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
    .scripts.ask.split(' ')
    .slice(1)

/** How long a person waits for the first word, and the memory it takes. */
export const benchStartup = async (): Promise<{ name: string; rows: Row[] }> => {
  const folder = mkdtempSync(join(tmpdir(), 'larderbell-bench-'))
  const empty = join(folder, 'empty.ts')
  writeFileSync(empty, '')
  const candidates: [label: string, command: string, argv: string[], goal?: string][] = [
    ['whole ask through npm', 'npm', ['run', '-s', 'ask', '--', LINE], '0.5 s'],
    ['ask without npm', process.execPath, [...askScript(), LINE]],
    ['node with tsx and an empty file', process.execPath, ['--import', 'tsx', empty]],
  ]
  const rows: Row[] = []
  try {
    for (const [label, command, argv, goal] of candidates) {
      wallMs(command, argv)
      const time = seconds(median(Array.from({ length: TIMES }, () => wallMs(command, argv))))
      const memory = peakMb(command, argv)
      rows.push(goal === undefined ? [`${label}, time`, time] : [`${label}, time`, time, goal])
      rows.push([`${label}, peak memory`, memory === null ? 'not measured' : `${memory.toFixed(0)} MB`])
    }
    const greetings: number[] = []
    for (let index = 0; index < TIMES; index++) greetings.push(await greetingMs())
    rows.push(['npm start to the prompt', seconds(median(greetings)), '0.6 s'])
  } finally {
    rmSync(folder, { recursive: true })
  }
  return { name: 'start-up', rows }
}
