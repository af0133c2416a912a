import { type ChildProcess, spawn } from 'node:child_process'
import { renameSync } from 'node:fs'
import { basename, join } from 'node:path'
import { createInterface } from 'node:readline'
import { buildSync } from 'esbuild'

/** A TypeScript program in a process of its own. */
export interface Child {
  /** Everything it has printed so far. */
  readonly lines: readonly string[]
  /** Waits until it has printed so many lines, or has ended. */
  heard(lines: number): Promise<void>
  /** Asks it something and waits for the line it answers with. */
  ask(line: string): Promise<string>
  /** Ends it without giving it a chance to do anything, and waits until it is gone and all it printed has arrived. */
  kill(): Promise<void>
  readonly pid: number
}

const KEPT = join(import.meta.dirname, '..', '..', 'node_modules', '.cache', 'larderbell')

const bundles = new Map<string, string>()

/** The program in one file, which starts in a fraction of the time that tsx takes. */
function bundleOf(program: string): string {
  const known = bundles.get(program)
  if (known !== undefined) return known
  const outfile = join(KEPT, `${basename(program, '.ts')}.mjs`)
  const making = join(KEPT, `${basename(program, '.ts')}-${process.pid}.mjs`)
  const options = { bundle: true, platform: 'node', format: 'esm', logLevel: 'silent' } as const
  buildSync({ ...options, entryPoints: [program], outfile: making })
  renameSync(making, outfile)
  bundles.set(program, outfile)
  return outfile
}

/** Starts `program` (the path of a TypeScript file) with `argv`. What it prints on standard error comes out with the tests. */
export function startChild(program: string, argv: readonly string[]): Child {
  const child: ChildProcess = spawn(process.execPath, [bundleOf(program), ...argv], {
    stdio: ['pipe', 'pipe', 'inherit'],
  })
  const lines: string[] = []
  let wake = (): void => {}
  let isGone = false
  createInterface({ input: child.stdout! }).on('line', (line) => {
    lines.push(line)
    wake()
  })
  const gone = new Promise<void>((resolve, reject) => {
    child.on('error', reject)
    child.on('close', () => {
      isGone = true
      wake()
      resolve()
    })
  })
  const heard = async (count: number): Promise<void> => {
    while (lines.length < count && !isGone) {
      await new Promise<void>((resolve) => {
        wake = resolve
      })
    }
  }
  return {
    lines,
    heard,
    async ask(line) {
      const before = lines.length
      child.stdin!.write(`${line}\n`)
      await heard(before + 1)
      return lines[before]!
    },
    async kill() {
      child.kill('SIGKILL')
      await gone
    },
    pid: child.pid!,
  }
}
