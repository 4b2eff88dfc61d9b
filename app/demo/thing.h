// SPDX-License-Identifier: MIT
#pragma once

#include "app/demo/random.h"
#include "app/demo/supply.h"

#include <memory>

namespace cradlepost::demo {

/** When somebody looks at a thing. */
struct Look
{
    Instant at; ///< finish of the round
    Date day; ///< the shift's
};

/** One thing of the ward as it really is, whether somebody looks or not. */
class Thing
{
public:
    Thing() = default;
    Thing(const Thing&) = delete;
    Thing& operator=(const Thing&) = delete;
    virtual ~Thing() = default;

    [[nodiscard]] bool isFaulty() const { return m_faulty; }
    /** It fails; `which` picks the step or part. */
    void fail(Random& random, Date today, std::optional<int> which = std::nullopt);
    void mend(Random& random, Date today);
    /** A shift passes. `offset`: what season and hour add to a reading. */
    virtual void pass(Random& random, const Look& begin, double offset);
    /** A birth uses it. */
    virtual void use(Random& random, Date today);
    /** Said at the begin of each shift. */
    virtual void hear(const StoreNews& news);
    /** What a round finds. */
    virtual Answer seen(const Look& look, Random& random) const = 0;

protected:
    virtual void failed(Random& random, Date today, std::optional<int> which);
    virtual void mended(Random& random, Date today);

private:
    bool m_faulty = false;
};

/** The thing that an item of the checklist is about, in good order. */
std::unique_ptr<Thing> makeThing(const Item& item, const UnitPlan& plan, Random& random, Date today);

// One maker for each kind of item.
std::unique_ptr<Thing> makeFixture(const Item& item);
std::unique_ptr<Thing> makeDevice(
    const Item& item, const StepsRule& rule, const UnitPlan& plan, Random& random);
std::unique_ptr<Thing> makeMeter(
    const Item& item, const MeasureRule& rule, const UnitPlan& plan, Random& random);
std::unique_ptr<Thing> makeWarmth(const SinceRule& rule);
std::unique_ptr<Thing> makeCylinder(const CylinderRule& rule, const UnitPlan& plan, Random& random);
std::unique_ptr<Thing> makeShelf(
    const Item& item, const CountRule& rule, const UnitPlan& plan, Date today);
std::unique_ptr<Thing> makeKits(const Item& item, const KitRule& rule, const UnitPlan& plan);

}
