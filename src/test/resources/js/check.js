// A test is a named function; a comparison that fails is an error with both values.

/** @type {{ name: string, body: () => unknown }[]} */
const tests = []

export function test(name, body) {
  tests.push({ name, body })
}

/** Runs every test of the page. */
export async function run() {
  const results = []
  for (const { name, body } of tests) {
    try {
      await body()
      results.push({ name, fault: "" })
    } catch (fault) {
      results.push({ name, fault: String(fault?.stack ?? fault) })
    }
  }
  return results
}

export function same(actual, expected, what = "") {
  const [is, wanted] = [text(actual), text(expected)]
  if (is !== wanted) throw new Error(`${what} is ${is}; it must be ${wanted}`)
}

export async function json(address) {
  return (await fetch(address)).json()
}

/** Every case of a folder of test data that the Java tests read too. */
export async function cases(folder) {
  const names = await json(`/testdata/${folder}/`)
  return Promise.all(
    names.map(async (name) => ({ name, ...(await json(`/testdata/${folder}/${name}`)) })),
  )
}

/** Names in order, so that two objects with the same content look the same. */
const text = (value) =>
  JSON.stringify(value, (_, inner) =>
    inner && typeof inner === "object" && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort())
      : inner,
  )
