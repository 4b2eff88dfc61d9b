// SPDX-License-Identifier: MIT
#include "tests/ui/theme/colourvision.h"
#include "ui/theme/roles.h"

#include <doctest/doctest.h>
#include <string>

using namespace cradlepost;

TEST_CASE("contrast is that of WCAG 2.2 for black, white and a grey worked by hand")
{
    CHECK(contrastRatio(Qt::black, Qt::white) == doctest::Approx(21.0));
    CHECK(contrastRatio(Qt::white, Qt::black) == doctest::Approx(21.0));
    CHECK(contrastRatio(Qt::white, Qt::white) == doctest::Approx(1.0));
    // #777777: linear value of 119/255 is 0.18448; (1.05) / (0.23448) = 4.478
    CHECK(contrastRatio(QColor(0x77, 0x77, 0x77), Qt::white) == doctest::Approx(4.478).epsilon(0.001));
    CHECK(relativeLuminance(QColor(255, 0, 0)) == doctest::Approx(0.2126));
    CHECK(relativeLuminance(QColor(0, 0, 255)) == doctest::Approx(0.0722));
}

TEST_CASE("every pair of colours in use reaches its contrast, by day and by night")
{
    CHECK(contrastPairs().size() >= 25);
    for (const auto& [name, roles] : {std::pair("day", lightRoles()), std::pair("night", darkRoles())}) {
        for (const ContrastPair& pair : contrastPairs()) {
            const double ratio = contrastRatio(roles.*pair.front, roles.*pair.back);
            INFO(std::string(name), ", ", std::string(pair.use), ": ", ratio);
            CHECK(ratio >= pair.least);
        }
    }
}

TEST_CASE("marks stand out from what they lie on for readers without one kind of cones")
{
    using namespace colourvision;
    for (const Roles& roles : {lightRoles(), darkRoles()}) {
        for (auto* see : {&protanopia, &deuteranopia, &tritanopia}) {
            for (const QColor& mark : {roles.accent, roles.warning, roles.amber, roles.inkHint}) {
                for (const QColor& ground : {roles.paper, roles.sheet, roles.accentWash}) {
                    INFO(mark.name().toStdString(), " on ", ground.name().toStdString());
                    CHECK(contrastRatio(see(mark), see(ground)) >= 3.0);
                }
            }
        }
    }
}

TEST_CASE("the simulation leaves grey as it is and takes red from green")
{
    using namespace colourvision;
    const QColor grey(128, 128, 128);
    for (auto* see : {&protanopia, &deuteranopia, &tritanopia}) {
        CHECK(std::abs(see(grey).red() - 128) <= 2);
        CHECK(std::abs(see(grey).blue() - 128) <= 2);
    }
    CHECK(protanopia(QColor(200, 40, 40)).red() == protanopia(QColor(200, 40, 40)).green());
    CHECK(deuteranopia(QColor(200, 40, 40)).red() == deuteranopia(QColor(200, 40, 40)).green());
}
