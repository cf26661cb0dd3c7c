#!/bin/sh
# SPDX-FileCopyrightText: The Fluewright developers
# SPDX-License-Identifier: GPL-3.0-or-later
# Every control of the real window has a name and a role on the accessibility bus.
#   dbus-run-session sh cmake/with-window.sh sh tests/window/has_names.sh PROGRAM TREE-READER DESIGN
set -eu
program=$1
reader=$2
HOME=$(mktemp -d)
export HOME
unset XDG_CONFIG_HOME XDG_DATA_HOME XDG_CACHE_HOME || true
# A copy: the program is killed in the end and leaves its lock beside the file.
design=$HOME/$(basename "$3")
cp "$3" "$design"
running=
bus=
trap '[ -z "$running" ] || kill "$running" 2>/dev/null || true; [ -z "$bus" ] || kill "$bus" 2>/dev/null || true; rm -rf "$HOME"' EXIT
/usr/libexec/at-spi-bus-launcher --launch-immediately &
bus=$!
QT_LINUX_ACCESSIBILITY_ALWAYS_ON=1 "$program" "$design" &
running=$!
"$reader" fluewright
