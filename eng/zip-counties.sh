#!/usr/bin/env bash
# Makes data/zip-counties.csv and data/zip-straddlers.csv anew, or into the folder given.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
cd "$root/eng/zip-counties"
npm ci --ignore-scripts --no-audit --no-fund --silent
node make.js "${1:-$root/data}"
