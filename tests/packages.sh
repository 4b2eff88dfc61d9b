# Debian 12 packages that only the tests need; sourced by tests/run.
# shellcheck shell=bash
test_packages=(doctest-dev)
