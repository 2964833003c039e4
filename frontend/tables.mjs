/** Writes the tables that need no script, of the core's answers on standard input; `jointwise build` calls it. */
import {readFileSync} from 'node:fs';
import {builtInTables} from './src/saved/tables.js';

process.stdout.write(builtInTables(JSON.parse(readFileSync(0, 'utf8'))));
