/** Where a dragged row would land: its new place among rows whose middles are at `middles`, without itself. */
export function landing(pointer, middles, from) {
  return middles.filter((middle, at) => at !== from && middle < pointer).length;
}
