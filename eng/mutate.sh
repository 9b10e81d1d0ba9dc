#!/usr/bin/env bash
# Changes the law in one small place at a time and asks whether a test notices. See docs/mutation-testing.md. No part of ./test.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
cd "$root"
. eng/setup.sh

need_dotnet
for project in tests/Stringline.Law.Tests tests/Published eng/Mutate; do
  nice dotnet build -c Release -v quiet -maxcpucount:1 "$project" || fail "$project does not build."
done
exec nice eng/Mutate/bin/Release/net10.0/Mutate "$@"
