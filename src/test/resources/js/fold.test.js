import { foldJar } from "#js/walk/fold.js"
import { cases, same, test } from "#test/check.js"

for (const { name, why, events, state, facts, questions } of await cases("walk/fold")) {
  test(`folds ${name}`, () => {
    const jar = foldJar(events)
    same(jar.state, state, why + ": state")
    same(jar.facts, facts, why + ": facts")
    same(jar.questions, questions, why + ": questions")
  })

  test(`folds ${name} in any order and sent twice`, () => {
    const jar = foldJar([...events, ...events].reverse())
    same(jar.state, state, why + ": state")
    same(jar.facts, facts, why + ": facts")
  })
}
