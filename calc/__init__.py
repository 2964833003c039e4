"""The calculation core of Jointwise: typed request in, typed result out.

Nothing in here does input or output but reading its own catalogue: no web, no
clock, no randomness. It needs numpy and msgspec only, so that it runs the same
in the browser and behind the HTTP API. Enter by `jointwise.calc.operations`.
"""
