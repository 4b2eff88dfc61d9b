// SPDX-License-Identifier: MIT
// startup DATABASE: exec to first paint of *This shift* against an empty window, in turns, median of 21.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

namespace {

struct Run
{
    double ms = 0;
    long kib = 0;
};

Run start(const std::string& command)
{
    const auto from = std::chrono::steady_clock::now();
    std::FILE* out = popen(("exec " + command).c_str(), "r");
    Run run;
    char line[64] = "";
    if (out != nullptr && std::fgets(line, sizeof line, out) != nullptr)
        run.ms = std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - from).count();
    run.kib = std::atol(line);
    if (out == nullptr || pclose(out) != 0 || run.kib == 0) {
        std::fprintf(stderr, "could not run %s\n", command.c_str());
        std::exit(1);
    }
    return run;
}

Run median(std::vector<Run> runs)
{
    std::sort(runs.begin(), runs.end(), [](const Run& a, const Run& b) { return a.ms < b.ms; });
    return runs[runs.size() / 2];
}

}

int main(int argc, char** argv)
{
    if (argc < 4) {
        std::fprintf(stderr, "use: startup EMPTYWINDOW SHIFTWINDOW DATABASE\n");
        return 2;
    }
    std::vector<Run> empty;
    std::vector<Run> shift;
    for (int i = 0; i < 21; ++i) {
        empty.push_back(start(argv[1]));
        shift.push_back(start(std::string(argv[2]) + " " + argv[3]));
    }
    const Run e = median(empty);
    const Run s = median(shift);
    std::printf("start-up: empty window %.1f ms, This shift %.1f ms, ratio %.2f; resident %.1f and %.1f MiB\n", e.ms, s.ms,
        s.ms / e.ms, static_cast<double>(e.kib) / 1024, static_cast<double>(s.kib) / 1024);
    return 0;
}
