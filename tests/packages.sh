# Debian 12 packages that only the tests need; sourced by tests/run.
# shellcheck shell=bash
# R, SciPy and statsmodels are what the statistics are checked against.
test_packages=(doctest-dev r-base-core r-cran-survival python3-scipy python3-statsmodels
    # Holds FHIR resources against their published schema.
    python3-jsonschema
    # Started by the tests themselves, in a folder of their own; a server that Debian starts is left alone.
    postgresql-15
    # Readers of what reports are written as.
    poppler-utils python3-openpyxl)
