# Debian 12 packages that building and running need; sourced by app/start and tests/run.
# shellcheck shell=bash

build_packages=(
    g++ cmake ninja-build pkg-config ccache mold
    qt6-base-dev qt6-svg-dev qt6-tools-dev qt6-tools-dev-tools qt6-l10n-tools
    libspdlog-dev libfontconfig-dev libsodium-dev nettle-dev libdeflate-dev libmimalloc-dev libxlsxwriter-dev libsqlite3-dev libpq-dev zlib1g-dev libcli11-dev libexpected-dev libboost-dev libboost-math-dev rapidjson-dev
    tzdata fonts-inter fonts-noto-core)

# need PACKAGE...: installs those that are missing, as root or through sudo.
need() {
    local missing=() package
    for package in "$@"; do
        dpkg-query -W -f '${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || missing+=("$package")
    done
    ((${#missing[@]} == 0)) && return 0
    echo "Installing: ${missing[*]}"
    local as_root=()
    if ((EUID != 0)); then
        command -v sudo >/dev/null || {
            echo "These packages are missing and only root can install them: ${missing[*]}" >&2
            return 1
        }
        as_root=(sudo)
    fi
    "${as_root[@]}" apt-get update -qq
    DEBIAN_FRONTEND=noninteractive "${as_root[@]}" apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
}
