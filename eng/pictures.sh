#!/usr/bin/env bash
# Renews the pictures of docs/papers.md and the README from the papers of the demo jobs, and those of the user guide from the desk:
# eng/pictures.sh. To be looked at before they are committed.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
. "$root/eng/setup.sh"
need_dotnet
need pdftoppm poppler-utils "draws the papers"
need montage imagemagick "sets the pages side by side"
need chromium chromium "pictures the desk"
cd "$root"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
dotnet build -c Release -v quiet -maxcpucount:2 --nologo
STRINGLINE_PAPERS_OUT="$work" tests/Stringline.Cli.Tests/bin/Release/net10.0/Stringline.Cli.Tests -class '*DemoJobPapersTests' >/dev/null

# beside NAME PAPER:PAGE...: four pages in a row, as docs/pictures/NAME.png.
beside() {
  local name=$1 page pages=()
  shift
  for page; do
    pdftoppm -r 100 -scale-to-x 595 -scale-to-y -1 -f "${page##*:}" -l "${page##*:}" -singlefile -png "$work/${page%:*}.pdf" "$work/${page//:/-}"
    pages+=("$work/${page//:/-}.png")
  done
  montage "${pages[@]}" -tile "$#x1" -geometry +8+8 -background '#d6d0c8' -strip -depth 8 -colors 32 "PNG8:docs/pictures/$name.png"
}

beside claim-packet alder-court--claim--claim-of-mechanics-lien:1 alder-court--claim--claim-of-mechanics-lien:2 alder-court--claim--claim-of-mechanics-lien:3 \
  alder-court--claim--counter-sheet:1
beside paper-fourteen-owners tamarind-wharf--claim--claim-of-mechanics-lien:1 tamarind-wharf--claim--claim-of-mechanics-lien:2 \
  tamarind-wharf--claim--claim-of-mechanics-lien:4 tamarind-wharf--certified-mail-sheet--certified-mail-sheet:1
beside paper-waiver-and-stop-work alder-court--waiver-8132--waiver-8132:1 alder-court--waiver-8132--instruction-sheet:1 \
  juniper-lane--stop-work-notice--notice-of-intent-to-stop-work:1 juniper-lane--stop-work-notice--stop-work-notice:1
beside paper-design-lien thistlebank-garden--design-lien--claim-of-design-professionals-lien:1 thistlebank-garden--design-lien--counter-sheet:1 \
  thistlebank-garden--design-lien-demand--design-professionals-demand:1

STRINGLINE_ACCEPT=1 tests/Stringline.Browser.Tests/bin/Release/net10.0/Stringline.Browser.Tests -class '*GuideTests' >/dev/null
echo "Renewed: docs/pictures, docs/user-guide/pictures. Look at them."
