import cron from 'node-cron'

/** Sets up a task for each jar, or one a minute for all of them, and prints what it took. */
const tasks = Number(process.argv[2])

const beforeMb = process.memoryUsage().rss / 2 ** 20
const startMs = performance.now()
for (let index = 0; index < tasks; index++) cron.schedule(tasks === 1 ? '* * * * *' : `${index % 60} 9 * * *`, () => {})
console.log(
  JSON.stringify({ setUpMs: performance.now() - startMs, grownMb: process.memoryUsage().rss / 2 ** 20 - beforeMb }),
)
process.exit()
