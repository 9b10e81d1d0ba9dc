# Sourced by ./run and ./test: a quiet .NET, and the tools that the build needs. Says plainly what is missing.
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 DOTNET_SKIP_FIRST_TIME_EXPERIENCE=1 DOTNET_GENERATE_ASPNET_CERTIFICATE=false
export MSBUILDDISABLENODEREUSE=1 DOTNET_CLI_USE_MSBUILD_SERVER=0

fail() { printf '%s\n' "$@" >&2; exit 1; }

# need COMMAND PACKAGE WHAT-FOR: makes sure that a command is there, through Debian's packages where that is possible.
need() {
  command -v "$1" >/dev/null 2>&1 && return
  if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; then
    echo "Installing $2 ($3) ..." >&2
    { apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $2; } >/dev/null 2>&1 || true
  fi
  command -v "$1" >/dev/null 2>&1 || fail "Stringline needs the command '$1' ($3)." "Install it, for example: sudo apt-get install $2"
}

need_dotnet() {
  local version
  version=$(cd "$root" && dotnet --version 2>/dev/null) || version=0
  [ "${version%%.*}" -ge 10 ] 2>/dev/null ||
    fail "Stringline needs the .NET SDK 10 (command 'dotnet'); found: ${version/#0/none}." "Install it from the packages of your system or from Microsoft, then run this again."
}

# The packages of a lock file, one a line: name, version, hash of the content.
packages_of() {
  awk -F'"' '/^      "[^"]+": \{/ {name = $2} $2 == "resolved" {version = $4} $2 == "contentHash" {print name, version, $4}' "$1" | sort -u
}

# same_packages MADE COMMITTED: fails where a package of the first is not in the second with the very same content.
same_packages() {
  local other
  other=$(comm -23 <(packages_of "$1") <(packages_of "$2"))
  [ -z "$other" ] || { printf '%s\n' "Packages that are not those of $2:" "$other" >&2; return 1; }
}

# same_packages_everywhere LOCK: the lock file of that name, which a publishing wrote in each folder of the program, beside the committed one.
# What is handed out is restored for one system, and the committed files name none; so their hashes are compared here.
same_packages_everywhere() {
  local made found=0
  for made in "$root"/src/*/"$1"; do
    [ -f "$made" ] || continue
    found=1
    same_packages "$made" "$(dirname "$made" | sed 's|/obj$||')/packages.lock.json" || return 1
  done
  [ "$found" = 1 ] || { echo "No lock file $1 was written: what was restored cannot be told." >&2; return 1; }
}

# Publishes the program, compiled ahead of time for this machine, into out/stringline. Skips it while no source is newer.
# The lock files that are committed hold no runtime identifier, so this restore writes its own under obj/, which must hold the same packages.
publish() {
  local tool="$root/out/stringline/stringline.dll"
  if [ -f "$tool" ] && [ -z "$(find "$root"/src "$root"/data "$root"/Directory.* "$root"/global.json \
      \( -name obj -o -name bin \) -prune -o -type f -newer "$tool" -print -quit)" ]; then
    return
  fi
  echo "Building Stringline ..." >&2
  (cd "$root" && dotnet publish src/Stringline.Cli -c Release --use-current-runtime --self-contained false -v quiet -maxcpucount:2 \
    -p:PublishReadyToRun=true -p:RestoreLockedMode=false -p:NuGetLockFilePath=obj/publish.lock.json -o out/stringline) >&2 || return 1
  same_packages_everywhere obj/publish.lock.json || { rm -rf "$root/out/stringline"; return 1; }
  touch "$tool"
}

# From here on the tests tell what they try into a folder of this run, for eng/reliability.sh.
count_attacks() {
  STRINGLINE_ATTACKS=$(mktemp -d)
  export STRINGLINE_ATTACKS
  trap 'rm -rf "$STRINGLINE_ATTACKS"' EXIT
}

# Publishes the program that the tests of the journal kill, compiled ahead of time, so that two hundred of it start quickly.
publish_crash_writer() {
  (cd "$root" && dotnet publish tests/Stringline.Store.Crash -c Release --use-current-runtime --self-contained false -v quiet -maxcpucount:2 \
    -p:PublishReadyToRun=true -p:RestoreLockedMode=false -p:NuGetLockFilePath=obj/publish.lock.json -o out/crash) >&2
  export STRINGLINE_CRASH_WRITER=out/crash/Stringline.Store.Crash
}
