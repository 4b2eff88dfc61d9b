// SPDX-License-Identifier: MIT
#include "core/review/options.h"

namespace cradlepost {

double SeverityWeights::of(Severity severity) const
{
    switch (severity) {
    case Severity::Critical:
        return critical;
    case Severity::Major:
        return major;
    case Severity::Minor:
        break;
    }
    return minor;
}

}
