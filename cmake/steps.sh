# SPDX-FileCopyrightText: The Fluewright developers
# SPDX-License-Identifier: GPL-3.0-or-later
# The steps that run.sh and test.sh share. Sourced, POSIX sh, works on a Debian 12 with nothing installed.

say() { printf '==> %s\n' "$*"; }
fail() { printf '==> FAILED: %s\n' "$*" >&2; exit 1; }

# The names in package lists, comments and blank lines dropped.
packages_in() { sed -e 's/#.*//' -e 's/[[:space:]]//g' -e '/^$/d' "$@"; }

# Those of the named packages that dpkg does not know as installed.
missing_of() {
  dpkg-query -W -f='${Package} ${db:Status-Status}\n' "$@" 2>/dev/null |
    { have=' '; while read -r name status; do [ "$status" = installed ] && have="$have$name "; done
      for name in "$@"; do case "$have" in *" $name "*) ;; *) printf '%s ' "$name" ;; esac; done; }
}

as_root() {
  if [ "$(id -u)" -eq 0 ]; then "$@"
  elif command -v sudo >/dev/null 2>&1; then sudo "$@"
  else fail "installing packages needs root: run this as root, or install sudo. To install by hand: apt-get install $missing"
  fi
}

# install_packages LIST...: only what is missing; nothing at all happens when all is there.
install_packages() {
  command -v dpkg-query >/dev/null 2>&1 && command -v apt-get >/dev/null 2>&1 ||
    fail "this is made for Debian 12, and there is no apt-get here. The packages wanted are listed in: $*"
  missing=$(missing_of $(packages_in "$@"))
  if [ -z "$missing" ]; then say "packages: all there"; return; fi
  say "packages to install: $missing"
  as_root env DEBIAN_FRONTEND=noninteractive apt-get -q -o DPkg::Lock::Timeout=300 update ||
    fail "apt-get update did not work: is there a network, and are the sources in /etc/apt in order?"
  as_root env DEBIAN_FRONTEND=noninteractive \
    apt-get -q -y -o DPkg::Lock::Timeout=300 -o Dpkg::Use-Pty=0 --no-install-recommends install $missing ||
    fail "apt-get could not install: $missing (Fluewright is made for Debian 12)"
  missing=$(missing_of $(packages_in "$@"))
  [ -z "$missing" ] || fail "still not installed after apt-get: $missing"
}

# configure PRESET: once; afterwards ninja itself notices changed build files. A build folder that came along with a
# moved or copied tree is made anew.
configure() {
  cache=build/$1/CMakeCache.txt
  if [ -f "$cache" ] && [ -f "build/$1/build.ninja" ] &&
    grep -qxF "CMAKE_HOME_DIRECTORY:INTERNAL=$(pwd -P)" "$cache"; then
    say "configured: build/$1"
    return
  fi
  say "configuring build/$1"
  cmake --fresh --preset "$1" || fail "configuring (cmake --preset $1): the reason stands above"
}

# build_preset PRESET [TARGET...]
build_preset() {
  preset=$1
  shift
  say "building build/$preset"
  cmake --build "build/$preset" ${1:+--target "$@"} || fail "building build/$preset: the first error above is the reason"
}
