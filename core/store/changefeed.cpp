// SPDX-License-Identifier: MIT
#include "core/store/changefeed.h"

#include "core/store/postgresaddress.h"
#include "core/store/postgresconnection.h"

#include <QSocketNotifier>
#include <QTimer>

namespace cradlepost {

namespace {
using namespace std::chrono_literals;
constexpr auto tryAgainAfter = 30s;
constexpr auto gatherFor = 200ms; // one look at the shift for many records of one import
}

class ChangeFeed::Listener
{
public:
    Listener(std::string address, std::function<void()> changed)
        : m_address(std::move(address))
    {
        m_soon.setSingleShot(true);
        m_soon.setInterval(gatherFor);
        QObject::connect(&m_soon, &QTimer::timeout, &m_soon, std::move(changed));
        m_again.setSingleShot(true);
        m_again.setInterval(tryAgainAfter);
        QObject::connect(&m_again, &QTimer::timeout, &m_again, [this] {
            if (listen())
                m_soon.start(); // something may have been written meanwhile
        });
        listen();
    }

private:
    bool listen()
    {
        m_socket.reset();
        try {
            m_connection = std::make_unique<PostgresConnection>(m_address, true);
            m_connection->listen("cradlepost");
        } catch (const Failure&) {
            m_connection.reset(); // the store says so, to whoever works with it
            m_again.start();
            return false;
        }
        m_socket = std::make_unique<QSocketNotifier>(m_connection->socket(), QSocketNotifier::Read);
        QObject::connect(m_socket.get(), &QSocketNotifier::activated, &m_soon, [this] { hear(); });
        return true;
    }

    void hear()
    {
        if (m_connection->takeNotifications() > 0 && !m_soon.isActive())
            m_soon.start();
        if (m_connection->socket() < 0) {
            m_socket->setEnabled(false);
            m_again.start();
        }
    }

    std::string m_address;
    std::unique_ptr<PostgresConnection> m_connection;
    std::unique_ptr<QSocketNotifier> m_socket;
    QTimer m_soon;
    QTimer m_again;
};

ChangeFeed::ChangeFeed(const std::string& address, std::function<void()> changed)
{
    if (isPostgresAddress(address))
        m_listener = std::make_unique<Listener>(address, std::move(changed));
}

ChangeFeed::~ChangeFeed() = default;

}
