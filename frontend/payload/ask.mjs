/** Asks the payload in a folder every case, under Node, and prints the answers as JSON: `node ask.mjs FOLDER`. */
import {askAll} from './cases.mjs';
import {openPayload} from './open.mjs';

const {python, core} = await openPayload(process.argv[2]);
const decoder = new TextDecoder();
const answers = askAll(python, core).map(({body, refusal}) => refusal ?? JSON.parse(decoder.decode(body)));
console.log(JSON.stringify(answers));
