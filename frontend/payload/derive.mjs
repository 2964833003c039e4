/** Which modules the core needs: found by starting it whole and asking it everything. */
import {writeFileSync} from 'node:fs';
import {openCore} from '../src/worker/core.js';
import {LISTS, packer} from './archives.mjs';
import {askAll, CASES} from './cases.mjs';
import {module, startPython} from './python.mjs';

const PLACES = {stdlib: '/lib/python314.zip', packages: '/lib/python3.14/site-packages'};

/** Write the lists of modules anew. */
export async function derive() {
  const pack = packer(await startPython());
  const archives = [pack.packages({whole: true}), pack.core()];
  const python = await startPython();
  askAll(python, openCore(python, ...archives), CASES);
  const loaded = module(python, 'loaded');
  for (const [name, place] of Object.entries(PLACES)) {
    const names = loaded
      .under(place)
      .toJs()
      .filter((one) => !one.startsWith('jointwise'));
    writeFileSync(LISTS[name], `${names.join('\n')}\n`);
    console.log(`${name}: ${names.length} modules`);
  }
}
