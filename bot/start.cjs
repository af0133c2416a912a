// Starts the bot without a build step of its own. The sources, zod and lowdb are bundled once and the bundle kept, with what
// V8 makes of it, under a name that says which files, of what size and time, it was made from; where it cannot be kept, tsx
// loads the sources instead.
// Less than half the start-up time of loading some 250 files one by one, measured by `npm run bench`.
const { createHash } = require('node:crypto')
const { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } = require('node:fs')
const Module = require('node:module')
const { join } = require('node:path')
const { Script } = require('node:vm')
const { reminderRules } = require('./reminder-rules.cjs')

const root = join(__dirname, '..')
const kept = join(root, 'node_modules', '.cache', 'larderbell')

const fingerprint = () => {
  const hash = createHash('sha256').update(`${process.version} ${require('esbuild/package.json').version}`)
  const lock = statSync(join(root, 'package-lock.json'))
  hash.update(`${lock.mtimeMs} ${lock.size}\n`)
  for (const room of ['bot', 'core', 'store']) {
    if (!existsSync(join(root, room))) continue
    for (const name of readdirSync(join(root, room), { recursive: true }).sort()) {
      const { mtimeMs, size } = statSync(join(root, room, name))
      hash.update(`${room}/${name} ${mtimeMs} ${size}\n`)
    }
  }
  return hash.digest('hex').slice(0, 16)
}

/** Keeps one script of a source and all that it imports, with some names put in as values. */
const pack = (source, path, named) => {
  const making = join(kept, `making-${process.pid}.cjs`)
  require('esbuild').buildSync({
    entryPoints: [join(__dirname, source)],
    outfile: making,
    bundle: true,
    platform: 'node',
    format: 'cjs',
    // They look for files of their own, and are loaded when they are needed.
    external: ['node-cron', 'discord.js', '@resvg/resvg-js'],
    // A script run from its kept form cannot import, only require.
    supported: { 'dynamic-import': false },
    define: Object.fromEntries(Object.entries(named).map(([name, value]) => [name, JSON.stringify(value)])),
    logLevel: 'silent',
  })
  renameSync(making, path)
}

const PACKED = /^(?:main|drawing)-/

/** Path of a bundle of the sources as they are now. The one of the thread that draws is there before it. */
const bundle = () => {
  const of = fingerprint()
  const [path, drawing] = [join(kept, `main-${of}.cjs`), join(kept, `drawing-${of}.cjs`)]
  if (existsSync(path) && existsSync(drawing)) return path
  mkdirSync(kept, { recursive: true })
  for (const old of readdirSync(kept)) if (PACKED.test(old)) rmSync(join(kept, old), { force: true })
  pack(join('picture', 'render', 'drawing-thread.ts'), drawing, {})
  pack('main.ts', path, { LARDERBELL_RULES: reminderRules(), LARDERBELL_DRAWING: drawing })
  return path
}

const start = () => {
  try {
    return bundle()
  } catch {
    return null
  }
}

/** Runs the bundle from what V8 made of it the last time, and keeps that at the end of the first time. */
const run = (path) => {
  const made = path.replace(/cjs$/, 'v8')
  const cachedData = existsSync(made) ? readFileSync(made) : undefined
  const script = new Script(Module.wrap(readFileSync(path, 'utf8')), { filename: path, cachedData })
  const module = { exports: {} }
  script.runInThisContext()(module.exports, Module.createRequire(path), module, path, kept)
  if (cachedData !== undefined && !script.cachedDataRejected) return
  process.once('exit', () => {
    try {
      const making = join(kept, `making-${process.pid}.v8`)
      writeFileSync(making, script.createCachedData())
      renameSync(making, made)
    } catch {}
  })
}

const path = start()
if (path === null) {
  // zod first and plainly, so that it need not go through tsx.
  require('zod')
  require('tsx/cjs')
  require('./main.ts')
} else run(path)
