#!/bin/sh
# SPDX-FileCopyrightText: The Fluewright developers
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what the tests need, builds everything and runs every test without a screen; the tests of the real window
# bring their own display. Closes with a line of counts; the exit status is 0 only if every test passed.
#   sh cmake/test.sh
set -eu
cd "$(dirname "$0")/.."
. cmake/steps.sh

install_packages cmake/packages-run.txt cmake/packages-test.txt
configure test
build_preset test

say "running the tests"
report=$(pwd -P)/build/test/test-report.xml
rm -f "$report"
# The property tests draw the same cases every time.
RC_PARAMS="${RC_PARAMS:-seed=1}" \
  ctest --test-dir build/test --parallel "$(nproc)" --output-on-failure --no-tests=error \
    --timeout 600 --output-junit "$report" || true
[ -f "$report" ] || fail "ctest ended without a report"

# The counts from the report's head: <testsuite tests="3" failures="1" disabled="0" skipped="0" ...
head_count() { sed -n -e '/<testsuite/,/>/p' "$report" | sed -n -e "s/.*[[:space:]]$1=\"\([0-9]*\)\".*/\1/p" | head -n 1; }
total=$(head_count tests)
failed=$(head_count failures)
skipped=$(($(head_count disabled) + $(head_count skipped)))
say "details in build/test/test-report.xml"
printf '%s passed, %s failed, %s skipped\n' $((total - failed - skipped)) "$failed" "$skipped"
[ "$failed" -eq 0 ] && [ "$total" -gt 0 ]
