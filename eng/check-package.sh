#!/usr/bin/env bash
# Runs the package for Linux as somebody would who has just unpacked it: from a folder with blanks in its name, with an empty home, without
# any .NET of the machine. Then a second copy, unpacked elsewhere, must find what the first one kept.
set -euo pipefail
archive=$1
place=$(mktemp -d)
desk=
trap '[ -z "$desk" ] || kill "$desk" 2>/dev/null || true; rm -rf "$place"' EXIT
mkdir -p "$place/home" "$place/tools" "$place/first copy" "$place/second copy, newer"
tar -xzf "$archive" -C "$place/first copy"
tar -xzf "$archive" -C "$place/second copy, newer"

# Stands in for the browser: keeps the page that it is to open.
printf '#!/bin/sh\nwhile read -r line; do echo "$line"; done <"$1" >"%s/reading"\nmv "%s/reading" "%s/opened"\n' "$place" "$place" "$place" >"$place/tools/xdg-open"
chmod +x "$place/tools/xdg-open"
for tool in sh dirname mv; do ln -s "$(command -v "$tool")" "$place/tools/$tool"; done

open_desk() {
  rm -f "$place/opened"
  env -i HOME="$place/home" PATH="$place/tools" "$1"/stringline-*/stringline-desk.sh --port "$port" >"$place/said" 2>&1 &
  desk=$!
  for _ in $(seq 150); do
    [ ! -s "$place/opened" ] || break
    kill -0 "$desk" 2>/dev/null || { echo "The desk of the package does not open:" >&2; cat "$place/said" >&2; exit 1; }
    sleep 0.2
  done
  address=$(sed -n 's/.*content="0; url=\([^"]*\)".*/\1/p' "$place/opened")
  [ "$(curl -sL -o "$place/page" -c "$place/cookies" -b "$place/cookies" -w '%{http_code}' "$address")" = 200 ] || { echo "The first page is not answered with 200." >&2; exit 1; }
  address=${address%open/*}
}

close_desk() { kill "$desk"; wait "$desk" 2>/dev/null || true; desk=; }

# A port that is free just now.
for port in $(shuf -i 20000-45000 -n 20); do (exec 3<>"/dev/tcp/127.0.0.1/$port") 2>/dev/null || break; done

open_desk "$place/first copy"
grep -q 'An empty desk' "$place/page"
[ -f "$place/home/.local/share/stringline/office.stringline" ]
seal=$(curl -s -c "$place/cookies" -b "$place/cookies" "${address}jobs/new" | sed -n 's/.*name="__RequestVerificationToken" type="hidden" value="\([^"]*\)".*/\1/p' | head -1)
[ "$(curl -s -o /dev/null -c "$place/cookies" -b "$place/cookies" -w '%{http_code}' --data-urlencode "__RequestVerificationToken=$seal" \
  -d 'Form.Name=Sawpit+Row&Form.Kind=private&Form.County=Yolo&Form.Claimant=Quillback+Lumber&Form.Role=supplier&Form.Customer=Tamarack+Framing&Form.CustomerIs=subcontractor' "${address}jobs/new")" = 302 ]
close_desk

open_desk "$place/second copy, newer"
[ "$(curl -s -b "$place/cookies" "${address}search?for=Sawpit" | grep -c 'Sawpit Row')" -ge 1 ] || { echo "The second copy does not find what the first one kept." >&2; exit 1; }
close_desk
echo "$(basename "$archive"): unpacked and opened without .NET on the machine; a second copy finds the same store."
