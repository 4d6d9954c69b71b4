// Starts what the page asks for.

import { startIn } from "#js/lib/behaviours.js"

await startIn(document)
