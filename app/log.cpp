// SPDX-License-Identifier: MIT
#include "app/log.h"

#include "app/paths.h"

#include <spdlog/sinks/rotating_file_sink.h>
#include <spdlog/spdlog.h>

namespace cradlepost {

namespace {
constexpr std::size_t maxBytes = 1024 * 1024;
constexpr std::size_t keptFiles = 3;
}

void startLog(const std::string& level)
{
    try {
        auto logger = spdlog::rotating_logger_st("cradlepost", logFile().toStdString(), maxBytes, keptFiles);
        logger->set_level(spdlog::level::from_str(level));
        logger->flush_on(spdlog::level::info);
        spdlog::set_default_logger(std::move(logger));
    } catch (const spdlog::spdlog_ex&) {
        spdlog::set_level(spdlog::level::off);
    }
}

}
