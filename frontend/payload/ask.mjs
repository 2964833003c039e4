/**
 * Asks the payload in a folder, under Node, the cases in a file like cases.json, and prints the answers as JSON:
 *
 *   node ask.mjs FOLDER CASES
 */
import {readFileSync} from 'node:fs';
import {askAll} from './cases.mjs';
import {openPayload} from './open.mjs';

const [payload, cases] = process.argv.slice(2);
const {python, core} = await openPayload(payload);
const decoder = new TextDecoder();
const answers = askAll(python, core, JSON.parse(readFileSync(cases, 'utf8')));
console.log(JSON.stringify(answers.map(({body, refusal}) => refusal ?? JSON.parse(decoder.decode(body)))));
