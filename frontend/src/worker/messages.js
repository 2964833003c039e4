/**
 * Every message between the page and the worker that holds the core.
 *
 * All are plain data. A request is sent only when the one before it is
 * answered, so that what waits can be dropped on the page's side.
 *
 * page → worker
 *   start   the names of the payload's parts, which follow in any order
 *   part    one of them: its name and {bytes, sha256}, bytes packed with gzip
 *   ask     a request: its number, the operation, the request as JSON bytes, the packs that count as {label, text}
 * worker → page
 *   stage   how far starting has come, UNPACKING, STARTING, LOADING, then READY
 *   unable  the core can't start here
 *   taken   the request of this number was received; its answer follows
 *   answer  the result as JSON bytes
 *   refused the request can't be answered; `refusal` is {detail, field, value, allowed}
 * within the page
 *   died    stands for what a worker that broke down can't say any more
 * page → service worker
 *   take over   of the build before, whose pages are about to be loaded anew
 *   started     the page runs, so that builds nobody uses any more can be told
 * service worker → page
 *   took over   the build whose worker is in charge from now on
 *   which build asks for the page's own; the port that comes with it takes the answer
 */
export const UNPACKING = 'unpacking';
export const STARTING = 'starting Python';
export const LOADING = 'loading numpy';
export const READY = 'ready';

export const start = (names) => ({kind: 'start', names});
export const part = (name, contents) => ({kind: 'part', name, contents});
export const ask = (number, operation, body, packs) => ({kind: 'ask', number, operation, body, packs});

export const stage = (name) => ({kind: 'stage', name});
export const unable = (reason) => ({kind: 'unable', reason});
export const died = (reason) => ({kind: 'died', reason});
export const taken = (number) => ({kind: 'taken', number});
export const answer = (number, body) => ({kind: 'answer', number, body});
export const refused = (number, refusal) => ({kind: 'refused', number, refusal});

export const TAKE_OVER = 'take over';
export const takeOver = () => ({kind: TAKE_OVER});
export const STARTED = 'started';
export const started = () => ({kind: STARTED});
export const TOOK_OVER = 'took over';
export const tookOver = (build) => ({kind: TOOK_OVER, build});
export const WHICH_BUILD = 'which build';
export const whichBuild = () => ({kind: WHICH_BUILD});
