# Sourced by ./package: how a build for a system is made, and what lies beside it.

# publish_for SYSTEM FOLDER: publishes; prints what came of it: self-contained, needs-runtime or portable.
publish_for() {
  local system=$1 to=$2 log="$work/$1.log"
  local common=(publish src/Stringline.Cli -c Release -r "$system" -v quiet -maxcpucount:2
    -p:RestoreLockedMode=false -p:RunAnalyzers=false -p:EnforceCodeStyleInBuild=false "-p:NuGetLockFilePath=obj/package-$system.lock.json" -o "$to")
  : >"$log"
  # A fault of ours is no reason to fall back: only a pack that cannot be restored is.
  try() {
    rm -rf "$to"
    if dotnet "${common[@]}" "$@" >"$log" 2>&1; then
      same_packages_everywhere "obj/package-$system.lock.json" || fail "What was restored for $system is not what the lock files name."
      return
    fi
    grep -qE 'error (NU|NETSDK)[0-9]+' "$log" || fail "$(tail -5 "$log")"
    return 1
  }
  # Compiled ahead of time where the compiler for it is there, since it then starts in a fraction of the time.
  if try --self-contained true -p:PublishReadyToRun=true || try --self-contained true; then
    echo self-contained
  elif try --self-contained false -p:UseAppHost=true -p:PublishReadyToRun=true || try --self-contained false -p:UseAppHost=true; then
    echo needs-runtime
  elif try --self-contained false -p:UseAppHost=false; then
    echo portable
  else
    return 1
  fi
}

how_in_words() {
  case $1 in
    self-contained) echo "self-contained, needs no .NET" ;;
    needs-runtime) echo "needs the ASP.NET Core Runtime 10" ;;
    portable) echo "portable, needs the ASP.NET Core Runtime 10 (command 'dotnet')" ;;
  esac
}

# add_launchers SYSTEM HOW FOLDER: what is double-clicked. Each hands further words on to "stringline desk".
add_launchers() {
  local system=$1 how=$2 to=$3
  case $system in
    win-*)
      local run='"%~dp0program\stringline.exe"'
      [ "$how" = portable ] && run='dotnet "%~dp0program\stringline.dll"'
      printf '%s\r\n' '@echo off' 'title Stringline' "$run desk %*" 'if errorlevel 1 pause' >"$to/Stringline.cmd"
      ;;
    *)
      local name=Stringline.command run='"$here/program/stringline"'
      [[ $system == linux-* ]] && name=stringline-desk.sh
      [ "$how" = portable ] && run='dotnet "$here/program/stringline.dll"'
      cat >"$to/$name" <<END
#!/bin/sh
# Opens the desk in the browser. It runs until this window is closed.
here=\$(cd "\$(dirname "\$0")" && pwd)
exec $run desk "\$@"
END
      chmod +x "$to/$name"
      [ "$how" = portable ] || chmod +x "$to/program/stringline"
      if [[ $system == linux-* ]]; then
        cat >"$to/Stringline.desktop" <<'END'
[Desktop Entry]
Type=Application
Name=Stringline
Comment=Keeps payment claims on California construction jobs true
Exec=sh -c 'exec "$(dirname "$1")/stringline-desk.sh"' sh %k
Terminal=true
Categories=Office;
END
        chmod +x "$to/Stringline.desktop"
      fi
      ;;
  esac
}

# add_start_here SYSTEM HOW VERSION FOLDER
add_start_here() {
  local system=$1 how=$2 version=$3 to=$4 start data quoted first tool
  case $system in
    win-*)
      start='Double-click Stringline.cmd. A window opens and stays, and the desk opens in your browser; closing the window closes the desk.'
      first='Windows may warn that the program is not known, since it is not signed: "More info", then "Run anyway".'
      data='%LOCALAPPDATA%\stringline\office.stringline'
      quoted="\"$data\" (in a Command Prompt opened in this folder)"
      tool='program\stringline.exe' ;;
    osx-*)
      start='Double-click Stringline.command. A window of Terminal opens and stays, and the desk opens in your browser; closing the window closes the desk.'
      first='macOS may refuse the program, since it is not signed by a registered developer: open Terminal, type
   xattr -dr com.apple.quarantine  and a blank, drag this folder into the window, and press Return. Then double-click again.'
      data='~/Library/Application Support/stringline/office.stringline'
      quoted='"$HOME/Library/Application Support/stringline/office.stringline" (in a Terminal opened in this folder)'
      tool='program/stringline' ;;
    *)
      start='Run ./stringline-desk.sh in a terminal, or double-click Stringline.desktop (your desktop may ask to allow it). The desk opens in your browser.'
      first='It needs what .NET needs of the system: glibc, libstdc++ and OpenSSL, which the usual desktop systems have.'
      data='~/.local/share/stringline/office.stringline'
      quoted="$data (in a terminal opened in this folder)"
      tool='program/stringline' ;;
  esac
  [ "$how" = portable ] && tool="dotnet ${tool%.exe}.dll"
  {
    echo "Stringline $version for $system"
    echo
    echo "Not legal advice. Confirm with the county recorder, the local rules and a California construction lawyer."
    echo
    echo "1. Unpack this archive anywhere, and keep the folder whole."
    echo "2. $start"
    echo "3. $first"
    echo
    case $how in
      self-contained) echo "Nothing else has to be installed: the .NET runtime is inside." ;;
      *) echo "It needs the ASP.NET Core Runtime 10 for this system; get it from Microsoft or from the packages of your system, then start again." ;;
    esac
    echo
    echo "Your data: $data"
    echo "It lies apart from this folder. To upgrade, unpack a newer version anywhere, close the desk, and start the new one; delete the old folder when you like."
    echo "Do not go back to an older version once a newer one has opened your data."
    echo
    echo "To back up, also while the desk is open (the copy is checked as it is made):"
    echo "   $tool store backup my-backup.stringline --store $quoted"
    echo
    echo "The desk answers on this machine only, and sends nothing anywhere."
    echo "All commands: $tool --help"
  } >"$to/START-HERE.txt"
  if [[ $system == win-* ]]; then sed -i 's/$/\r/' "$to/START-HERE.txt"; fi
}

# add_licenses SYSTEM HOW FOLDER: our license, and those of everything that is inside.
add_licenses() {
  local system=$1 how=$2 to=$3/licenses cache=${NUGET_PACKAGES:-$HOME/.nuget/packages} id version folder
  mkdir -p "$to"
  cp LICENSE "$to/Stringline-LICENSE.txt"
  echo "Packages inside, with the license that each names" >"$to/PACKAGES.txt"
  {
    sed -n 's|^      "\([^/"]*\)/\([^"]*\)": {$|\1 \2|p' "$3/program/stringline.deps.json" | sed 's/^runtimepack\.//' | grep -v '^Stringline\.\|^stringline '
  } | sort -fu | while read -r id version; do
    folder="$cache/$(tr '[:upper:]' '[:lower:]' <<<"$id")/$version"
    [ -d "$folder" ] || continue
    printf '%s %s: %s\n' "$id" "$version" "$(sed -n 's:.*<license [^>]*>\([^<]*\)</license>.*:\1:p; s:.*<licenseUrl>\([^<]*\)</licenseUrl>.*:\1:p' "$folder"/*.nuspec | head -1)" >>"$to/PACKAGES.txt"
    find "$folder" -maxdepth 1 -type f \( -iname 'license*' -o -iname 'third*notices*' -o -iname 'notice*' \) | while read -r file; do
      cp "$file" "$to/$id-$(basename "$file")"
    done
  done
  # The fonts are part of the program's library.
  cp src/Stringline.Papers/assets/OFL.txt "$to/Noto-fonts-OFL.txt"
}

# pack SYSTEM FOLDER NAME TO: prints the archive. The same sources give the same order and times inside.
pack() {
  local system=$1 in=$2 name=$3 to=$4 at
  at=$(git log -1 --format=%ct 2>/dev/null || date +%s)
  find "$in/$name" -exec touch -h -d "@$at" {} +
  if [[ $system == linux-* ]]; then
    tar -C "$in" --sort=name --owner=0 --group=0 --numeric-owner -cf - "$name" | gzip -9n >"$to/$name.tar.gz"
    echo "$to/$name.tar.gz"
  else
    (cd "$in" && find "$name" -print | LC_ALL=C sort | TZ=UTC zip -q -9 -X "$to/$name.zip" -@)
    echo "$to/$name.zip"
  fi
}
