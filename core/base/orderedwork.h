// SPDX-License-Identifier: MIT
#pragma once

#include <condition_variable>
#include <deque>
#include <exception>
#include <functional>
#include <memory>
#include <mutex>
#include <thread>
#include <vector>

namespace cradlepost {

/**
 * Works on batches in several threads and gives them back in the order in which they were put. put() and
 * take() belong to one thread, which says by waiting() how much may be on its way at once.
 */
template <class Batch> class OrderedWork
{
public:
    OrderedWork(unsigned threads, std::function<void(Batch&)> work)
        : m_work(std::move(work))
    {
        for (unsigned i = 0; i < threads; ++i)
            m_threads.emplace_back([this](const std::stop_token& stop) { run(stop); });
    }

    void put(Batch batch)
    {
        {
            const std::lock_guard lock(m_mutex);
            m_order.push_back(std::make_unique<Job>(Job{.batch = std::move(batch)}));
            m_open.push_back(m_order.back().get());
        }
        m_toDo.notify_one();
    }
    /** The oldest, once it is worked on. What the work threw comes out here. */
    Batch take()
    {
        std::unique_lock lock(m_mutex);
        m_isDone.wait(lock, [this] { return m_order.front()->done; });
        const std::unique_ptr<Job> job = std::move(m_order.front());
        m_order.pop_front();
        if (job->thrown)
            std::rethrow_exception(job->thrown);
        return std::move(job->batch);
    }
    /** Put and not yet taken. */
    [[nodiscard]] std::size_t waiting() const { return m_order.size(); }

private:
    struct Job
    {
        Batch batch;
        bool done = false;
        std::exception_ptr thrown = nullptr;
    };

    void run(const std::stop_token& stop)
    {
        std::unique_lock lock(m_mutex);
        while (m_toDo.wait(lock, stop, [this] { return !m_open.empty(); }) && !stop.stop_requested()) {
            Job* const job = m_open.front();
            m_open.pop_front();
            lock.unlock();
            std::exception_ptr thrown;
            try {
                m_work(job->batch);
            } catch (...) {
                thrown = std::current_exception();
            }
            lock.lock();
            job->thrown = thrown;
            job->done = true;
            m_isDone.notify_one();
        }
    }

    std::function<void(Batch&)> m_work;
    std::mutex m_mutex;
    std::condition_variable_any m_toDo;
    std::condition_variable m_isDone;
    std::deque<std::unique_ptr<Job>> m_order; ///< changed by the owner's thread only, under the lock
    std::deque<Job*> m_open;
    std::vector<std::jthread> m_threads; ///< last: they end before what they use
};

}
