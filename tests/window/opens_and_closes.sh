#!/bin/sh
# SPDX-FileCopyrightText: The Fluewright developers
# SPDX-License-Identifier: GPL-3.0-or-later
# The real program in a real window: it opens a design, shows it in good time, draws something, and leaves at a key.
#   sh cmake/with-window.sh sh tests/window/opens_and_closes.sh PROGRAM DESIGN PICTURE
set -eu
program=$1
design=$2
picture=$3
name=$(basename "$design")
fail() { echo "FAILED: $*" >&2; exit 1; }

HOME=$(mktemp -d)
export HOME
unset XDG_CONFIG_HOME XDG_DATA_HOME XDG_CACHE_HOME || true
running=
trap '[ -z "$running" ] || kill "$running" 2>/dev/null || true; rm -rf "$HOME"' EXIT

"$program" "$design" &
running=$!

# Its window, by the file's name in the title.
window=
tries=0
while [ -z "$window" ]; do
  tries=$((tries + 1))
  [ "$tries" -le 200 ] || fail "no window with '$name' in its title after 20 s"
  kill -0 "$running" 2>/dev/null || fail "the program ended before its window was there"
  sleep 0.1
  window=$(xdotool search --onlyvisible --name "$name" 2>/dev/null | head -n 1) || window=
done
xdotool windowactivate --sync "$window"
echo "window '$(xdotool getwindowname "$window")' after $tries tenths of a second"

# A drafting sheet with a design on it has more colours than an empty window.
tries=0
colours=0
while [ "$colours" -lt 100 ]; do
  tries=$((tries + 1))
  [ "$tries" -le 50 ] || fail "only $colours colours in the window: nothing is drawn"
  sleep 0.2
  import -window "$window" "$picture"
  colours=$(identify -format '%k' "$picture")
done
echo "$(identify -format '%w x %h' "$picture"), $colours colours"

xdotool key ctrl+q # to the window in front, as a keyboard does
tries=0
while kill -0 "$running" 2>/dev/null; do
  tries=$((tries + 1))
  [ "$tries" -le 100 ] || fail "still running 10 s after Ctrl+Q"
  sleep 0.1
done
status=0
wait "$running" || status=$?
running=
[ "$status" -eq 0 ] || fail "it ended with status $status"
