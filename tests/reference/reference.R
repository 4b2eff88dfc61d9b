# SPDX-License-Identifier: MIT
# reference.R FOLDER: answers the cases with R's own functions (base stats, survival); where R has no function, with
# the published formula written out again. Reads cases/*.csv, writes r/*.csv as case,field,value; NA: does not exist.
suppressPackageStartupMessages(library(survival))
options(warn = -1) # it warns of small counts, which are here on purpose
folder <- commandArgs(trailingOnly = TRUE)[1]

cases <- function(name) read.csv(file.path(folder, "cases", paste0(name, ".csv")), colClasses = "character")
num <- function(text) as.numeric(text)
list_of <- function(text) lapply(strsplit(text, " ", fixed = TRUE), as.numeric)
# answers: a named list of vectors, one value a case.
write_answers <- function(name, answers) {
  n <- length(answers[[1]])
  rows <- data.frame(case = rep(seq_len(n), times = length(answers)), field = rep(names(answers), each = n),
                     value = sprintf("%.17g", unlist(answers, use.names = FALSE)))
  rows$value[rows$value %in% c("NA", "NaN")] <- ""
  write.csv(rows, file.path(folder, "r", paste0(name, ".csv")), row.names = FALSE, quote = FALSE)
}
# Runs f over the cases; f gives a named vector.
each <- function(name, n, f) {
  rows <- vapply(seq_len(n), function(i) f(i), f(1))
  if (is.null(dim(rows))) rows <- matrix(rows, nrow = 1, dimnames = list(names(f(1)), NULL))
  write_answers(name, setNames(lapply(seq_len(nrow(rows)), function(k) rows[k, ]), rownames(rows)))
}


# ---- counts
d <- cases("proportion"); x <- num(d$x); n <- num(d$n); level <- num(d$level)
each("proportion", nrow(d), function(i) {
  w <- prop.test(x[i], n[i], conf.level = level[i], correct = FALSE)$conf.int
  e <- binom.test(x[i], n[i], conf.level = level[i])$conf.int
  u <- binom.test(x[i], n[i], conf.level = level[i], alternative = "less")$conf.int
  # prop.test leaves rounding units beside 0 and 1; the ends are exact there.
  c(wilson_low = if (x[i] == 0) 0 else w[1], wilson_high = if (x[i] == n[i]) 1 else w[2],
    exact_low = e[1], exact_high = e[2], exact_upper = u[2])
})

d <- cases("twoproportions"); x1 <- num(d$x1); n1 <- num(d$n1); x2 <- num(d$x2); n2 <- num(d$n2)
each("twoproportions", nrow(d), function(i) {
  test <- prop.test(c(x1[i], x2[i]), c(n1[i], n2[i]), correct = FALSE)
  f <- fisher.test(matrix(c(x1[i], n1[i] - x1[i], x2[i], n2[i] - x2[i]), 2), conf.int = FALSE)$p.value
  c(pooled_chi2 = unname(test$statistic), pooled_p = test$p.value, fisher_p = f)
})

d <- cases("rate"); x <- num(d$x); level <- num(d$level)
each("rate", nrow(d), function(i) {
  g <- poisson.test(x[i], conf.level = level[i])$conf.int
  c(garwood_low = g[1], garwood_high = g[2])
})

d <- cases("lqas"); n <- num(d$n); dd <- num(d$d); good <- num(d$good); poor <- num(d$poor); lot <- num(d$lot)
# Half a lot rounds up, as the engine does; R's round goes to even.
up <- function(v) floor(v + 0.5 + 1e-9)
finite <- lot > 0
lot <- pmax(lot, n) # what an endless lot holds there is not used
write_answers("lqas", list(
  good_failed = ifelse(finite, phyper(dd - 1, up(lot * good), lot - up(lot * good), n), pbinom(dd - 1, n, good)),
  poor_passed = ifelse(finite, phyper(dd - 1, up(lot * poor), lot - up(lot * poor), n, lower.tail = FALSE),
                       pbinom(dd - 1, n, poor, lower.tail = FALSE))))

d <- cases("lqasplan"); good <- num(d$good); poor <- num(d$poor); alpha <- num(d$alpha); beta <- num(d$beta)
each("lqasplan", nrow(d), function(i) {
  n <- 1:1200
  dd <- qbinom(beta[i], n, poor[i], lower.tail = FALSE) + 1 # smallest d that a poor lot reaches rarely enough
  a <- pbinom(dd - 1, n, good[i]); k <- which(a <= alpha[i])[1]
  c(n = n[k], d = dd[k], good_failed = a[k], poor_passed = pbinom(dd[k] - 1, n[k], poor[i], lower.tail = FALSE))
})

# ---- charts
# Western Electric and Nelson rules once more, by windows instead of counters. On a line (to 1e-9) is not beyond it.
flags_at <- function(z, i) {
  beyond <- function(v, line) v > line + 1e-9
  r <- c(beyond(abs(z[i]), 3), FALSE, FALSE, FALSE, FALSE)
  for (s in c(1, -1)) {
    w3 <- z[max(1, i - 2):i] * s
    w5 <- z[max(1, i - 4):i] * s
    r[2] <- r[2] || (beyond(z[i] * s, 2) && sum(beyond(w3, 2)) >= 2)
    r[3] <- r[3] || (beyond(z[i] * s, 1) && sum(beyond(w5, 1)) >= 4)
    r[4] <- r[4] || (i >= 8 && all(z[(i - 7):i] * s > 1e-12))
    r[5] <- r[5] || (i >= 6 && all(diff(z[(i - 5):i]) * s > 0))
  }
  r
}
# The sum of rows, each times the place of its rule.
signals <- function(z, rows) sum(vapply(seq_along(z), function(i) sum(flags_at(z, i) * 1:5) * rows[i], 0))
chart <- function(value, centre, sigma, rows, floor, ceiling) {
  k <- length(value)
  if (!(sigma[1] > 0)) return(c(centre, NA, NA, 0))
  c(centre, max(floor, centre - 3 * sigma[k]), min(ceiling, centre + 3 * sigma[k]), signals((value - centre) / sigma, rows))
}

d <- cases("sharechart"); xs <- list_of(d$x); ns <- list_of(d$n); p0 <- num(d$p0); p1 <- num(d$p1); lambda <- num(d$lambda)
each("sharechart", nrow(d), function(i) {
  x <- xs[[i]]; n <- ns[[i]]; rows <- which(n > 0)
  p <- x[rows] / n[rows]; centre <- sum(x) / sum(n)
  sigma <- sqrt(centre * (1 - centre) / n[rows])
  plain <- chart(p, centre, sigma, rows, 0, 1)
  sz <- 1; prime <- plain
  if (centre > 0 && centre < 1 && length(rows) > 1) {
    sz <- mean(abs(diff((p - centre) / sigma))) / 1.128
    if (sz < 1e-12) prime <- c(centre, NA, NA, 0) else prime <- chart(p, centre, sigma * sz, rows, 0, 1)
  }
  z <- p0[i]; v <- 0; s <- 0
  for (k in seq_along(n)) {
    if (n[k] > 0) {
      z <- lambda[i] * x[k] / n[k] + (1 - lambda[i]) * z
      v <- lambda[i]^2 * p0[i] * (1 - p0[i]) / n[k] + (1 - lambda[i])^2 * v
    }
    s <- max(0, s + dbinom(x[k], n[k], p1[i], log = TRUE) - dbinom(x[k], n[k], p0[i], log = TRUE))
  }
  c(setNames(plain, c("p_centre", "p_low", "p_high", "p_signals")),
    setNames(prime, c("prime_centre", "prime_low", "prime_high", "prime_signals")),
    prime_sigma_z = sz, ewma_last = z, ewma_sd = sqrt(v), cusum_last = s)
})

d <- cases("valuechart"); vs <- list_of(d$values); es <- list_of(d$exposure); lambda <- num(d$lambda)
each("valuechart", nrow(d), function(i) {
  v <- vs[[i]]; e <- es[[i]]; l <- lambda[i]; rows <- seq_along(v)
  mr <- mean(abs(diff(v)))
  xmr <- chart(v, mean(v), rep(mr / 1.128, length(v)), rows, -Inf, Inf)
  ev <- floor(v); ub <- sum(ev) / sum(e)
  u <- chart(ev / e, ub, sqrt(ub / e), rows, 0, Inf)
  z <- 10
  for (one in v) z <- l * one + (1 - l) * z
  k <- length(v)
  hi <- 0; lo <- 0
  for (one in v) { hi <- max(0, hi + one - 11.5); lo <- max(0, lo + 8.5 - one) }
  side <- sign(v - median(v)); side <- side[side != 0]; m <- length(side)
  run <- if (m == 0) rep(NA, 5) else {
    r <- rle(side)
    c(m, max(r$lengths), round(log2(m)) + 3, length(r$lengths) - 1, qbinom(0.05, m - 1, 0.5))
  }
  c(setNames(xmr, c("xmr_centre", "xmr_low", "xmr_high", "xmr_signals")),
    setNames(u, c("u_centre", "u_low", "u_high", "u_signals")),
    ewma_last = z, ewma_high = 10 + 3 * 4 * sqrt(l / (2 - l) * (1 - (1 - l)^(2 * k))), cusum_high = hi, cusum_low = lo,
    setNames(run, c("run_useful", "run_longest", "run_limit", "run_crossings", "run_crossings_limit")))
})

d <- cases("runlength"); n <- num(d$n); e <- num(d$per_event); s <- num(d$per_sample); h <- num(d$threshold); p <- num(d$p)
each("runlength", nrow(d), function(i) {
  m <- matrix(0, h[i], h[i]); prob <- dbinom(0:n[i], n[i], p[i])
  for (state in 0:(h[i] - 1)) {
    to <- pmax(0, state + e[i] * (0:n[i]) - s[i]); keep <- to < h[i]
    for (k in which(keep)) m[state + 1, to[k] + 1] <- m[state + 1, to[k] + 1] + prob[k]
  }
  run <- tryCatch(solve(diag(h[i]) - m, rep(1, h[i]))[1], error = function(x) NA)
  c(samples = if (n[i] * e[i] <= s[i]) NA else run)
})

# ---- units
d <- cases("funnellimit"); target <- num(d$target); n <- num(d$n); tail <- num(d$tail); x <- num(d$x)
r <- qbinom(tail, n, target)
write_answers("funnellimit", list(
  limit = (r - (pbinom(r, n, target) - tail) / dbinom(r, n, target)) / n,
  exact_p = pmin(1, 2 * pmin(pbinom(x, n, target), pbinom(x - 1, n, target, lower.tail = FALSE)))))

d <- cases("funnel"); xs <- list_of(d$x); ns <- list_of(d$n)
each("funnel", nrow(d), function(i) {
  x <- xs[[i]]; n <- ns[[i]]; t <- sum(x) / sum(n); s <- sqrt(t * (1 - t) / n); z <- (x / n - t) / s; k <- length(x)
  q <- quantile(z, c(0.1, 0.9), names = FALSE); zw <- pmin(pmax(z, q[1]), q[2])
  phi <- mean(z^2); phiw <- mean(zw^2); w <- 1 / s^2
  tau2 <- max(0, (k * phiw - (k - 1)) / (sum(w) - sum(w^2) / sum(w)))
  p <- pmin(1, 2 * pmin(pbinom(x, n, t), pbinom(x - 1, n, t, lower.tail = FALSE)))
  adjusted <- p.adjust(p, "BH")
  c(target = t, phi = phi, phi_winsorised = phiw, tau2 = tau2,
    p_overdispersion = pchisq(k * phi, k - 1, lower.tail = FALSE), p_adjusted_first = adjusted[1],
    p_adjusted_last = adjusted[k],
    high998_multiplicative = if (phiw > 1) min(1, t + qnorm(0.999) * s[k] * sqrt(phiw)) else NA,
    high998_additive = if (tau2 > 0) min(1, t + qnorm(0.999) * sqrt(s[k]^2 + tau2)) else NA)
})

d <- cases("adjust"); ps <- list_of(d$p)
each("adjust", nrow(d), function(i) {
  p <- ps[[i]]; k <- c(first = 1, middle = length(p) %/% 2 + 1, last = length(p))
  one <- function(name, method) setNames(p.adjust(p, method)[k], paste0(name, "_", names(k)))
  c(one("bh", "BH"), one("holm", "holm"), one("bonferroni", "bonferroni"))
})

d <- cases("randomeffects"); ys <- list_of(d$estimates); vs <- list_of(d$variances)
each("randomeffects", nrow(d), function(i) {
  y <- ys[[i]]; v <- vs[[i]]; w <- 1 / v; k <- length(y)
  q <- sum(w * (y - weighted.mean(y, w))^2)
  tau2 <- max(0, (q - (k - 1)) / (sum(w) - sum(w^2) / sum(w))); w <- 1 / (v + tau2)
  c(q = q, tau2 = tau2, mean = weighted.mean(y, w), se = sqrt(1 / sum(w)))
})

d <- cases("standardise"); ds <- list_of(d$events); ts <- list_of(d$exposure); ws <- list_of(d$weight)
rs <- list_of(d$rate); level <- num(d$level)
each("standardise", nrow(d), function(i) {
  e <- ds[[i]]; t <- ts[[i]]; w <- ws[[i]] / sum(ws[[i]]); a <- (1 - level[i]) / 2
  rate <- sum(w * e / t); v <- sum((w / t)^2 * e); wm <- max(w / t)
  low <- if (v > 0) qgamma(a, rate^2 / v, scale = v / rate) else 0
  high <- qgamma(a, (rate + wm)^2 / (v + wm^2), scale = (v + wm^2) / (rate + wm), lower.tail = FALSE)
  p <- e / t; expected <- sum(t * rs[[i]]); g <- poisson.test(sum(e), conf.level = level[i])$conf.int
  c(direct_rate = rate, direct_low = low, direct_high = high, share = sum(w * p),
    share_se = sqrt(sum(w^2 * p * (1 - p) / t)), ratio = sum(e) / expected, ratio_low = g[1] / expected,
    ratio_high = g[2] / expected)
})

d <- cases("sharetrend"); xs <- list_of(d$x); ns <- list_of(d$n); ss <- list_of(d$score)
each("sharetrend", nrow(d), function(i) {
  t <- prop.trend.test(xs[[i]], ns[[i]], ss[[i]])
  c(chi2 = unname(t$statistic), p = t$p.value)
})

# ---- durations
d <- cases("survival"); ts <- list_of(d$time); es <- list_of(d$ended); level <- num(d$level)
each("survival", nrow(d), function(i) {
  fit <- survfit(Surv(ts[[i]], es[[i]]) ~ 1, conf.type = "log-log", conf.int = level[i])
  at <- which(fit$n.event > 0)
  step <- function(k) {
    if (length(at) == 0) return(rep(NA, 4))
    j <- at[k]; s <- fit$surv[j]
    if (s <= 0) c(s, NA, NA, NA) else c(s, fit$std.err[j] * s, fit$lower[j], fit$upper[j])
  }
  first <- function(v) { k <- which(v[at] <= 0.5 + 1e-8); if (length(k)) fit$time[at][k[1]] else NA }
  lower <- ifelse(fit$surv <= 0, NA, fit$lower); upper <- ifelse(fit$surv <= 0, NA, fit$upper)
  m <- survival:::survmean(fit, rmean = max(ts[[i]]))$matrix
  c(setNames(step(length(at) %/% 2 + 1), paste0("mid_", c("survival", "se", "low", "high"))),
    setNames(step(length(at)), paste0("last_", c("survival", "se", "low", "high"))),
    median = first(fit$surv), median_low = first(lower), median_high = first(upper),
    mean = m[["rmean"]], mean_se = m[["se(rmean)"]])
})

d <- cases("logrank"); ts <- list_of(d$time); es <- list_of(d$ended); gs <- list_of(d$group)
each("logrank", nrow(d), function(i) {
  t <- survdiff(Surv(ts[[i]], es[[i]]) ~ gs[[i]])
  c(chi2 = t$chisq, p = pchisq(t$chisq, length(t$n) - 1, lower.tail = FALSE), expected_first = t$exp[1])
})

# ---- stock
d <- cases("demand"); mean_ <- num(d$mean); size <- num(d$size); k <- num(d$stock); service <- num(d$service)
nb <- size > 0
tailp <- function(k, i, lower = FALSE)
  if (nb[i]) pnbinom(k, size = size[i], mu = mean_[i], lower.tail = lower) else ppois(k, mean_[i], lower.tail = lower)
each("demand", nrow(d), function(i) {
  # E (N - k)+ as the sum of its upper tails.
  end <- if (nb[i]) qnbinom(1e-16, size = size[i], mu = mean_[i], lower.tail = FALSE) else qpois(1e-16, mean_[i], lower.tail = FALSE)
  far <- k[i] + 0:(max(end - k[i], 0) + 300)
  c(exactly = if (nb[i]) dnbinom(k[i], size = size[i], mu = mean_[i]) else dpois(k[i], mean_[i]),
    at_most = tailp(k[i], i, TRUE), stock_out = tailp(k[i], i), empty_shelf = tailp(k[i] - 1, i),
    unmet = sum(rev(tailp(far, i))),
    stock_for = if (nb[i]) qnbinom(service[i], size = size[i], mu = mean_[i]) else qpois(service[i], mean_[i]))
})

d <- cases("demandfit"); cs <- list_of(d$counts)
each("demandfit", nrow(d), function(i) {
  x <- cs[[i]]; m <- mean(x); v <- var(x)
  # A variance that equals the mean but for rounding has no size either way.
  c(mean = m, variance = v, size = if (v > m) m^2 / (v - m) else NA,
    p = pchisq(sum((x - m)^2) / m, length(x) - 1, lower.tail = FALSE))
})

# ---- trends
d <- cases("trend"); ts <- list_of(d$time); vs <- list_of(d$value)
each("trend", nrow(d), function(i) {
  t <- ts[[i]]; v <- vs[[i]]; n <- length(v)
  pair <- outer(seq_len(n), seq_len(n), "<")
  dt <- outer(t, t, function(a, b) b - a)[pair]; dv <- outer(v, v, function(a, b) b - a)[pair]
  s <- sum(sign(dt) * sign(dv)); slopes <- sort(dv[dt > 0] / dt[dt > 0]); m <- length(slopes)
  test <- cor.test(t, v, method = "kendall", exact = FALSE, continuity = TRUE)
  # cor.test gives z = (|S| - 1)/sqrt(V); from it the variance.
  z <- unname(test$statistic); variance <- if (abs(s) > 1) ((abs(s) - 1) / z)^2 else NA
  exact <- if (n <= 10 && !anyDuplicated(v) && !anyDuplicated(t)) cor.test(t, v, method = "kendall", exact = TRUE)$p.value else NA
  if (is.na(variance)) {
    tie <- function(u) { k <- table(u); c(sum(k * (k - 1) * (2 * k + 5)), sum(k * (k - 1)), sum(k * (k - 1) * (k - 2))) }
    a <- tie(t); b <- tie(v)
    variance <- (n * (n - 1) * (2 * n + 5) - a[1] - b[1]) / 18 + a[2] * b[2] / (2 * n * (n - 1)) +
      a[3] * b[3] / (9 * n * (n - 1) * (n - 2))
  }
  cc <- qnorm(0.975) * sqrt(variance); low <- (m - cc) / 2
  at <- function(rank) if (low < 1) NA else approx(seq_len(m), slopes, xout = min(rank, m))$y
  c(s = s, variance = variance, p_normal = if (s == 0) 1 else test$p.value, p_exact = exact, slope = median(slopes),
    slope_low = at(low), slope_high = at((m + cc) / 2 + 1))
})

d <- cases("trust"); cs <- list_of(d$counts); ss <- list_of(d$seconds)
each("trust", nrow(d), function(i) {
  t <- chisq.test(cs[[i]]); l <- log(ss[[i]]); m <- mad(l)
  c(digit_chi2 = unname(t$statistic), digit_p = t$p.value, pace_z_first = if (m > 0) (l[1] - median(l)) / m else NA,
    pace_median = median(l))
})
