-- What each of the concurrent users asks for next; wrk -s bench/desk.lua ADDRESS -- WHAT JOBS. WHAT is desk, search, job or mixed.
local what, jobs
local words = {"heron", "alder", "quince", "tasso", "mulberry", "foundry", "raisin", "ironbark", "fennimore", "yolo", "granger", "lumber"}
local counties = {"Yolo", "Fresno", "Alameda", "Kern", "Placer"}

function init(args)
  what, jobs = args[1], tonumber(args[2])
  math.randomseed(os.time())
end

local pages = {
  desk = function() return "/" end,
  county = function() return "/?county=" .. counties[math.random(#counties)] end,
  search = function() return "/search?for=" .. words[math.random(#words)] .. "%20" .. math.random(9999) end,
  word = function() return "/search?for=" .. words[math.random(#words)] end,
  job = function() return "/job/" .. math.random(jobs) end,
}
local mix = {"desk", "desk", "county", "search", "word", "job", "job", "job"}

function request()
  local page = what == "mixed" and mix[math.random(#mix)] or what
  return wrk.format("GET", pages[page]())
end

function done(summary, latency)
  local errors = summary.errors
  io.write(string.format("%7d pages  median %7.1f ms   99th %7.1f ms   slowest %7.1f ms   %6.0f a second   %d not as they should be\n",
    summary.requests, latency:percentile(50) / 1000, latency:percentile(99) / 1000, latency.max / 1000,
    summary.requests / (summary.duration / 1e6), errors.status + errors.connect + errors.read + errors.write + errors.timeout))
end
