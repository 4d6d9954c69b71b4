// Every screen by its name. A screen gives its nodes; what it leaves running, it ends in `leaving`.

import * as cut from "#js/walk/screens/cut.js"
import * as freezer from "#js/walk/screens/freezer.js"
import * as go from "#js/walk/screens/go.js"
import * as more from "#js/walk/screens/more.js"
import * as shake from "#js/walk/screens/shake.js"
import * as start from "#js/walk/screens/start.js"
import * as wash from "#js/walk/screens/wash.js"

/** @type {Record<string, (app: any, leaving: (ending: () => void) => void) => (Node | null)[]>} */
export const SCREENS = { ...start, ...go, ...cut, ...wash, ...shake, ...freezer, ...more }
