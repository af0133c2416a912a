const { createHash } = require('node:crypto')
const { join } = require('node:path')

const root = join(__dirname, '..')

/** Changes with any code that decides when a reminder falls due, and with no comment. */
exports.reminderRules = () => {
  const { outputFiles } = require('esbuild').buildSync({
    entryPoints: [join(root, 'store', 'due.ts')],
    bundle: true,
    minify: true,
    platform: 'node',
    write: false,
    logLevel: 'silent',
  })
  return createHash('sha256').update(outputFiles[0].contents).digest('hex').slice(0, 16)
}
