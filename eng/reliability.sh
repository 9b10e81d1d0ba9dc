#!/usr/bin/env bash
# The numbers of docs/reliability.md, as the suites told them into a folder (STRINGLINE_ATTACKS), a line for each passed test: how often it
# tried, a tab, the attack.
#   eng/reliability.sh FOLDER                fails where the page says more than was tried; with STRINGLINE_ACCEPT=1 writes them into it
#   eng/reliability.sh FOLDER long COMMAND   keeps them as those of a long run, in docs/reliability-long.tsv, from which the page takes them
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
page="$root/docs/reliability.md"
kept="$root/docs/reliability-long.tsv"
told=$(mktemp)
made=$(mktemp)
trap 'rm -f "$told" "$made"' EXIT
cat "$1"/*.txt | awk -F'\t' '{tried[$2] += $1} END {for (name in tried) print name "\t" tried[name]}' | sort >"$told"

if [ "${2:-}" = long ]; then
  awk -F'\t' -v OFS='\t' -v command="$3" -v day="$(date +%F)" '
    NR == FNR { tried[$1] = $2; next }
    !($1 in tried) { print }
    END { for (name in tried) print name, tried[name], command, day }' "$told" "$kept" | sort >"$made"
  cat "$made" >"$kept"
  exit
fi

awk -F'\t' -v accept="${STRINGLINE_ACCEPT:-}" '
  function grouped(n,   text, at) {
    text = n ""
    for (at = length(text) - 3; at > 0; at -= 3) text = substr(text, 1, at) "," substr(text, at + 1)
    return text
  }
  FILENAME == ARGV[1] { tried[$1] = $2; next }
  FILENAME == ARGV[2] { lasting[$1] = grouped($2) " by `" $3 "`, " $4; next }
  /^\| attack / { table = 1 }
  /^$/ { table = 0 }
  table && /^\| / && !/^\| attack / {
    count = split($0, cell, "|")
    name = cell[2]
    gsub(/^ +| +$/, "", name)
    if (name in tried) {
      said = cell[4]
      gsub(/[ ,]/, "", said)
      # A try more or less is chance in a few; the page may say less than was tried.
      if (accept == 1) {
        cell[4] = cell[5] = " " grouped(tried[name]) " "
      } else if (said + 0 > tried[name] || said == "" || cell[4] != cell[5]) {
        print "docs/reliability.md says " said " of the attack \"" name "\"; " tried[name] " were tried." >"/dev/stderr"
        wrong = 1
      }
    } else if (cell[3] !~ /needs/) {
      print "No test that passed makes the attack \"" name "\"." >"/dev/stderr"
      wrong = 1
    }
    cell[6] = name in lasting ? " " lasting[name] " " : " "
    seen[name] = 1
    row = ""
    for (i = 2; i < count; i++) row = row "|" cell[i]
    print row "|"
    next
  }
  { print }
  END {
    for (name in tried) if (!(name in seen)) { print "docs/reliability.md has no row for the attack \"" name "\"." >"/dev/stderr"; wrong = 1 }
    exit wrong
  }' "$told" "$kept" "$page" >"$made"
if [ "${STRINGLINE_ACCEPT:-}" = 1 ]; then
  cat "$made" >"$page"
elif ! cmp -s "$made" "$page"; then
  diff "$page" "$made" | grep '^[<>]' >&2 || true
  echo "docs/reliability.md does not say what the long runs tried (docs/reliability-long.tsv)." >&2
  exit 1
fi
