// SPDX-License-Identifier: MIT
#include "core/base/orderedwork.h"

#include <atomic>
#include <chrono>
#include <doctest/doctest.h>
#include <random>
#include <stdexcept>

using namespace cradlepost;

TEST_CASE("batches come back worked on, in the order they were put, however long each takes")
{
    std::atomic<int> worked{0};
    OrderedWork<int> work(4, [&](int& batch) {
        std::this_thread::sleep_for(std::chrono::microseconds(batch * 7919 % 300));
        batch *= 2;
        ++worked;
    });
    int taken = 0;
    for (int i = 0; i < 2000; ++i) {
        work.put(i);
        while (work.waiting() > 9)
            REQUIRE(work.take() == 2 * taken++);
    }
    while (work.waiting() > 0)
        REQUIRE(work.take() == 2 * taken++);
    CHECK(taken == 2000);
    CHECK(worked == 2000);
}

TEST_CASE("what the work throws comes out where its batch is taken")
{
    OrderedWork<int> work(2, [](int& batch) {
        if (batch == 3)
            throw std::runtime_error("three");
    });
    for (int i = 0; i < 6; ++i)
        work.put(i);
    for (int i = 0; i < 3; ++i)
        CHECK(work.take() == i);
    CHECK_THROWS_WITH(work.take(), "three");
    CHECK(work.take() == 4);
}

TEST_CASE("work that nobody takes any more ends with its owner")
{
    for (int round = 0; round < 50; ++round) {
        OrderedWork<int> work(3, [](int& batch) { ++batch; });
        for (int i = 0; i < 20; ++i)
            work.put(i);
        CHECK(work.take() == 1);
    }
}
