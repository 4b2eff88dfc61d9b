// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <QString>
#include <vector>

namespace cradlepost {

/// The text in pieces that each fit, cut between words where it can be, never inside a letter and its marks.
/// One piece when all of it fits. A longer text must not fit when a shorter one does not.
std::vector<QString> piecesOf(const QString& text, const std::function<bool(const QString&)>& fits);

}
