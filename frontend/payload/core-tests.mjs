/**
 * Runs the core's own tests that core_tests.py chooses on the payload's packages, under Node:
 *
 *   node core-tests.mjs PAYLOAD TOOLS [PYTEST ARGUMENTS]
 *
 * PAYLOAD is a folder made by payload.mjs, TOOLS one with the wheels of
 * frontend/runtime/requirements-test.txt. Pytest needs the whole standard
 * library, so it has it. Ends with pytest's own exit code.
 */
import {module} from './python.mjs';
import {openPayload} from './open.mjs';

const [payload, tools, ...options] = process.argv.slice(2);
if (tools === undefined) {
  console.error('usage: node core-tests.mjs PAYLOAD TOOLS [PYTEST ARGUMENTS]');
  process.exit(2);
}
const {python} = await openPayload(payload, {wholeLibrary: true});
python.mountNodeFS('/tools', tools);
module(python, 'pack');
process.exitCode = module(python, 'core_tests').run(python.toPy(options));
