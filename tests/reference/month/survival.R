# SPDX-License-Identifier: MIT
# survival.R FOLDER: curves of gaps.csv (severity, hours, mended), all together and by severity, with log-log
# limits, their medians, and the log-rank test of the severities.
suppressPackageStartupMessages(library(survival))
folder <- commandArgs(trailingOnly = TRUE)[1]
options(digits = 17)
gaps <- read.csv(file.path(folder, "gaps.csv"), stringsAsFactors = FALSE)

steps <- list()
medians <- list()
for (group in c("all", "critical", "major", "minor")) {
    mine <- if (group == "all") gaps else gaps[gaps$severity == group, ]
    if (nrow(mine) == 0) next
    fit <- survfit(Surv(hours, mended) ~ 1, data = mine, conf.type = "log-log")
    steps[[group]] <- data.frame(group, fit$time, fit$n.risk, fit$n.event, fit$surv, fit$lower, fit$upper)
    half <- quantile(fit, 0.5)
    medians[[group]] <- data.frame(group, half$quantile, half$lower, half$upper)
}
write.csv(do.call(rbind, steps), file.path(folder, "steps.csv"), row.names = FALSE)
write.csv(do.call(rbind, medians), file.path(folder, "medians.csv"), row.names = FALSE)

test <- data.frame(chisq = NA, df = NA, p = NA)
if (length(unique(gaps$severity)) > 1) {
    compared <- survdiff(Surv(hours, mended) ~ severity, data = gaps)
    df <- length(compared$n) - 1
    test <- data.frame(compared$chisq, df, pchisq(compared$chisq, df, lower.tail = FALSE))
}
write.csv(test, file.path(folder, "test.csv"), row.names = FALSE)
