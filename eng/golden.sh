#!/usr/bin/env bash
# Holds what the program says against what an earlier commit said: eng/golden.sh BEFORE [FILES].
# BEFORE is a commit; FILES is how many random jobs are asked beside the demo jobs (3,000 if not said). Every job is asked on five days:
# the assessment as JSON and as text, every paper's text as read back, the pages of the desk, and the exports. What is kept of a commit
# is used again by the next call. Ends with 0 only where nothing differs.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
. "$root/eng/setup.sh"
need_dotnet
cd "$root"
before=$(git rev-parse --verify "$1^{commit}")
files=${2:-3000}
place="$root/out/golden"
mkdir -p "$place"

# The tool of a tree, built in it.
tool() { echo "$1/tests/Golden/bin/Release/net10.0/Stringline.Golden"; }
build() { dotnet build "$1/tests/Golden" -c Release -v quiet -maxcpucount:2 --nologo; }

corpus="$place/corpus-$files"
kept="$place/${before:0:12}-$files"
if [ ! -d "$kept" ]; then
  tree="$place/tree-${before:0:12}"
  [ -d "$tree" ] || git worktree add --detach "$tree" "$before"
  build "$tree"
  [ -d "$corpus" ] || { "$(tool "$tree")" make "$corpus.part" "$files"; mv "$corpus.part" "$corpus"; }
  "$(tool "$tree")" run "$corpus" "$kept.part"
  mv "$kept.part" "$kept"
  git worktree remove --force "$tree"
fi
build "$root"
rm -rf "$place/now-$files"
"$(tool "$root")" run "$corpus" "$place/now-$files"
"$(tool "$root")" compare "$kept" "$place/now-$files"
