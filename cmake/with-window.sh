#!/bin/sh
# SPDX-FileCopyrightText: The Fluewright developers
# SPDX-License-Identifier: GPL-3.0-or-later
# Runs a command on a display of its own (Xvfb with a window manager), so that tests of the real window need no screen
# and do not disturb the one that is there.
#   sh cmake/with-window.sh COMMAND [ARGUMENT...]
set -eu
size=${FLUEWRIGHT_WINDOW_SIZE:-1600x1000}
work=$(mktemp -d)
server= manager=
clean_up() {
  [ -z "$manager" ] || kill "$manager" 2>/dev/null || true
  [ -z "$server" ] || kill "$server" 2>/dev/null || true
  wait 2>/dev/null || true
  rm -rf "$work"
}
trap clean_up EXIT
trap 'exit 130' INT TERM HUP

# wait_for NAME PROCESS LOG TEST...: ten seconds for the test to hold while the process lives.
wait_for() {
  name=$1 process=$2 log=$3
  shift 3
  tries=0
  until "$@"; do
    tries=$((tries + 1))
    if [ "$tries" -gt 100 ] || ! kill -0 "$process" 2>/dev/null; then
      echo "with-window: $name did not start:" >&2
      cat "$log" >&2
      exit 1
    fi
    sleep 0.1
  done
}

# Xvfb picks a free number itself and writes it once it listens. It must not start over when the last one leaves: the question
# below comes and goes before the window manager is there, which then found the door shut now and then.
Xvfb -displayfd 3 -noreset -screen 0 "${size}x24" -nolisten tcp 3>"$work/number" 2>"$work/server.log" &
server=$!
wait_for Xvfb "$server" "$work/server.log" test -s "$work/number"
DISPLAY=:$(cat "$work/number")
QT_QPA_PLATFORM=xcb
XDG_RUNTIME_DIR=$work
unset WAYLAND_DISPLAY || true
export DISPLAY QT_QPA_PLATFORM XDG_RUNTIME_DIR
HOME=$work XDG_CONFIG_HOME=$work openbox >"$work/manager.log" 2>&1 &
manager=$!
# The window manager has taken over once the root window says who it is.
managed() { xprop -root _NET_SUPPORTING_WM_CHECK 2>/dev/null | grep -q 'window id'; }
wait_for openbox "$manager" "$work/manager.log" managed
status=0
"$@" || status=$?
exit "$status"
