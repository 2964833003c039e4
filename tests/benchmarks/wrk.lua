-- Sends the request that the environment names, and prints what wrk measured as one line of JSON.
wrk.method = os.getenv("WRK_METHOD") or "GET"
wrk.body = os.getenv("WRK_BODY")
if wrk.body then wrk.headers["Content-Type"] = "application/json" end
if os.getenv("WRK_TAG") then wrk.headers["If-None-Match"] = os.getenv("WRK_TAG") end

if os.getenv("WRK_VARY") then
  function request() return wrk.format(nil, wrk.path .. os.getenv("WRK_VARY") .. string.format("%.12f", math.random()):sub(2)) end
end

function done(summary, latency)
  local errors = summary.errors
  local wrong = errors.status
  if os.getenv("WRK_REFUSED") then wrong = summary.requests - errors.status end
  print(string.format('{"requests": %d, "seconds": %f, "p50_ms": %f, "p99_ms": %f, "errors": %d}',
    summary.requests, summary.duration / 1e6, latency:percentile(50) / 1e3, latency:percentile(99) / 1e3,
    errors.connect + errors.read + errors.write + errors.timeout + wrong))
end
