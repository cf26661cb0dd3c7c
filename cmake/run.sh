#!/bin/sh
# SPDX-FileCopyrightText: The Fluewright developers
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what Fluewright needs, builds it and opens it on a demo design. Safe to repeat: what is done is skipped.
#   sh cmake/run.sh [DESIGN]
set -eu
start_folder=$(pwd -P)
cd "$(dirname "$0")/.."
. cmake/steps.sh

case ${1:-} in
  '') design= ;;
  /*) design=$1 ;;
  *) design=$start_folder/$1 ;;
esac
if [ -z "$design" ]; then
  # The first of the demo designs, in the order of their index.
  design=resources/demos/$(sed -n 's/^[^"]*"\([^"]*\)".*/\1/p' resources/demos/index.json | head -n 1).fluepath
fi
[ -f "$design" ] || fail "there is no design file $design"

install_packages cmake/packages-run.txt
configure release
build_preset release fluewright fluewright-cli
desktop=build/release/app/desktop/fluewright
cli=build/release/app/cli/fluewright-cli

# The command-line check of the same design, for a machine without a display.
check_instead() {
  results=build/check-$(basename "$design" .fluepath)
  say "no window: $1. Running the command-line check of $design instead"
  "$cli" check "$design" --json >"$results.json" || fail "the check of $design (fluewright-cli check --json)"
  "$cli" check "$design" >"$results.txt" || fail "the check of $design (fluewright-cli check)"
  cat "$results.txt"
  say "results written to $results.txt and $results.json"
}

# Whether a display is there to open a window on; says why not.
no_display() {
  case ${DISPLAY:-} in
    '') [ -n "${WAYLAND_DISPLAY:-}" ] && return 1
        printf 'neither DISPLAY nor WAYLAND_DISPLAY is set' ;;
    :*) number=${DISPLAY#:}
        [ -S "/tmp/.X11-unix/X${number%%.*}" ] && return 1
        printf 'DISPLAY is %s, but no display server listens there' "$DISPLAY" ;;
    *) return 1 ;;
  esac
}

if reason=$(no_display); then
  check_instead "$reason"
  exit 0
fi
# Qt asks for a runtime folder, which a root shell has not, and would say so at every start.
if [ -z "${XDG_RUNTIME_DIR:-}" ]; then
  XDG_RUNTIME_DIR=$(pwd -P)/build/runtime
  mkdir -p -m 700 "$XDG_RUNTIME_DIR"
  export XDG_RUNTIME_DIR
fi
say "opening $design"
began=$(date +%s)
status=0
"$desktop" "$design" || status=$?
[ "$status" -eq 0 ] && exit 0
# A program that ends at once with a fault never had its window: a display that refuses us, say.
[ $(($(date +%s) - began)) -lt 5 ] || fail "fluewright ended with status $status"
check_instead "the desktop program ended at once with status $status (its reason stands above)"
