// SPDX-License-Identifier: MIT
#pragma once

#include "tests/support/builders.h"

#include <sys/types.h>

namespace cradlepost::test {

/**
 * A throw-away PostgreSQL server on a socket in a folder of its own. It runs as an ordinary user (root
 * becomes another one for it) and dies with this process, however that ends.
 */
class PostgresServer
{
public:
    /** Whether it can be had on this computer; tests skip without it, except where tests/run installed it. */
    static bool isInstalled();

    explicit PostgresServer(int port = 5432);
    ~PostgresServer();
    PostgresServer(const PostgresServer&) = delete;
    PostgresServer& operator=(const PostgresServer&) = delete;

    /** "postgresql://keeper@/postgres?…": who owns everything. */
    [[nodiscard]] std::string address(const std::string& user = "keeper") const;
    /** An empty schema of its own in that database. */
    [[nodiscard]] std::string freshPlace();
    /** The same place for another user. */
    [[nodiscard]] std::string lastPlace(const std::string& user) const;
    /** Runs a script as the owner, in the place made last. */
    void run(const std::string& script) const;

    /** Kills all of it at once, as a power cut would. */
    void kill();
    void stop();
    void start();

private:
    TempDir m_dir;
    std::string m_folder;
    int m_port;
    pid_t m_process = -1;
    int m_places = 0;
};

/** One for all tests of this program, started when it is first asked for. */
PostgresServer& sharedServer();

}
