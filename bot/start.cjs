// Starts the bot without a build. zod is loaded first and plainly, then everything else through tsx's require hook:
// half the start-up time of `node --import tsx`, measured by `npm run bench`.
require('zod')
require('tsx/cjs')
require('./main.ts')
