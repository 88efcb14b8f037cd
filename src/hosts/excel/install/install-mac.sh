#!/bin/sh
# Puts the Bole add-in into the Excel of this Mac user, or takes it out again.
#
# It writes one file into the folder where Excel looks for add-ins that are tried out, and touches nothing else. It needs
# no administrator. Running it again does no harm.
#
#   sh install-mac.sh           puts Bole in
#   sh install-mac.sh --undo    takes it out
set -eu

address='{{address}}'
id='{{id}}'
excel="$HOME/{{excel}}"
place="$excel/{{folder}}/$id.manifest.xml"

take_out() {
  if [ -e "$place" ]; then
    rm "$place"
    echo "Removed $place"
  else
    echo "There is no $place"
  fi
  echo "Bole is gone from the next start of Excel on."
}

put_in() {
  if [ ! -d "$excel" ]; then
    echo "Excel has not been started on this Mac yet. Start it once, then try again." >&2
    exit 1
  fi
  mkdir -p "${place%/*}"
  part="$place.part"
  trap 'rm -f "$part"' EXIT
  curl --fail --silent --show-error --location --output "$part" "$address/manifest.xml" || {
    echo "$address/manifest.xml cannot be had. Nothing was changed." >&2
    exit 1
  }
  grep -q "<Id>$id</Id>" "$part" || {
    echo "What $address/manifest.xml answers is not Bole's manifest. Nothing was changed." >&2
    exit 1
  }
  mv "$part" "$place"
  echo "Wrote $place"
  echo "Quit Excel and start it again; then Home, Add-ins, Bole."
}

case "${1-}" in
  '') put_in ;;
  --undo) take_out ;;
  *)
    echo "Use: sh install-mac.sh [--undo]" >&2
    exit 2
    ;;
esac
