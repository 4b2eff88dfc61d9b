// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <memory>
#include <string>

namespace cradlepost {

/**
 * Says when other stations of a server have written. Of a file, and while the server is away, it says nothing; it
 * listens again once the server is there. Needs an event loop in its thread.
 */
class ChangeFeed
{
public:
    ChangeFeed(const std::string& address, std::function<void()> changed);
    ~ChangeFeed();
    ChangeFeed(const ChangeFeed&) = delete;
    ChangeFeed& operator=(const ChangeFeed&) = delete;

private:
    class Listener;
    std::unique_ptr<Listener> m_listener;
};

}
