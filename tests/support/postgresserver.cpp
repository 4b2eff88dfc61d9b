// SPDX-License-Identifier: MIT
#include "tests/support/postgresserver.h"

#include "core/store/database.h"

#include <csignal>
#include <fcntl.h>
#include <pwd.h>
#include <stdexcept>
#include <sys/prctl.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace cradlepost::test {

namespace {

const std::string programs = "/usr/lib/postgresql/15/bin/";

/** The server refuses root: then it runs as the user that owns nothing. */
const passwd* ordinaryUser() { return ::geteuid() == 0 ? ::getpwnam("nobody") : nullptr; }

/** All that needs memory is made before the fork: other threads may be at work. */
pid_t begin(const std::vector<std::string>& words, const std::string& folder)
{
    const passwd* user = ordinaryUser();
    const std::string log = folder + "/log";
    std::vector<char*> arguments;
    for (const std::string& word : words)
        arguments.push_back(const_cast<char*>(word.c_str()));
    arguments.push_back(nullptr);
    const pid_t process = ::fork();
    if (process != 0)
        return process;
    if (user != nullptr && (::setgid(user->pw_gid) != 0 || ::setuid(user->pw_uid) != 0))
        ::_exit(126);
    ::prctl(PR_SET_PDEATHSIG, SIGQUIT); // after the change of user, which would clear it
    const int out = ::open(log.c_str(), O_WRONLY | O_CREAT | O_APPEND, 0644);
    ::dup2(out, STDOUT_FILENO);
    ::dup2(out, STDERR_FILENO);
    if (::chdir(folder.c_str()) == 0)
        ::execv(arguments.front(), arguments.data());
    ::_exit(127);
}

}

bool PostgresServer::isInstalled() { return ::access((programs + "initdb").c_str(), X_OK) == 0; }

PostgresServer::PostgresServer(int port)
    : m_folder(m_dir.file("server"))
    , m_port(port)
{
    std::filesystem::create_directory(m_folder);
    ::setenv("XDG_DATA_HOME", m_dir.file("home").c_str(), 1); // where keys of stations of a server lie
    if (const passwd* user = ordinaryUser()) {
        ::chmod(m_dir.path().c_str(), 0711);
        if (::chown(m_folder.c_str(), user->pw_uid, user->pw_gid) != 0)
            throw std::runtime_error("the server's folder cannot be given to its user");
    }
    const pid_t making = begin({programs + "initdb", "-D", m_folder + "/data", "-U", "keeper", "-A", "trust",
                                   "-E", "UTF8", "--locale=C.UTF-8", "--no-sync", "--no-instructions"},
        m_folder);
    int status = 0;
    ::waitpid(making, &status, 0);
    if (status != 0)
        throw std::runtime_error("initdb failed, see " + m_folder + "/log");
    start();
}

PostgresServer::~PostgresServer() { stop(); }

void PostgresServer::start()
{
    for (int turn = 0; turn < 3000; ++turn) {
        // After a kill it refuses to start until the last of its old processes has gone.
        if (m_process <= 0 || ::waitpid(m_process, nullptr, WNOHANG) == m_process)
            m_process
                = begin({programs + "postgres", "-D", m_folder + "/data", "-k", m_folder, "-p",
                            std::to_string(m_port), "-c", "listen_addresses=", "-c", "max_connections=60"},
                    m_folder);
        if (attempt([&] { Database(address(), Database::Access::ReadWrite); }))
            return;
        std::this_thread::sleep_for(std::chrono::milliseconds(10));
    }
    throw std::runtime_error("the server did not start, see " + m_folder + "/log");
}

void PostgresServer::kill()
{
    // The other processes of a server end by themselves once the first one is gone.
    ::kill(m_process, SIGKILL);
    int status = 0;
    ::waitpid(m_process, &status, 0);
    m_process = -1;
}

void PostgresServer::stop()
{
    if (m_process <= 0)
        return;
    ::kill(m_process, SIGINT);
    int status = 0;
    ::waitpid(m_process, &status, 0);
    m_process = -1;
}

std::string PostgresServer::address(const std::string& user) const
{
    return "postgresql://" + user + "@/postgres?host=" + m_folder + "&port=" + std::to_string(m_port);
}

std::string PostgresServer::freshPlace()
{
    ++m_places;
    Database(address(), Database::Access::ReadWrite).run("CREATE SCHEMA ward" + std::to_string(m_places));
    return lastPlace("keeper");
}

std::string PostgresServer::lastPlace(const std::string& user) const
{
    return address(user) + "&options=-csearch_path%3Dward" + std::to_string(m_places);
}

void PostgresServer::run(const std::string& script) const
{
    Database(lastPlace("keeper"), Database::Access::ReadWrite).runScript(script);
}

PostgresServer& sharedServer()
{
    static PostgresServer server;
    return server;
}

}
