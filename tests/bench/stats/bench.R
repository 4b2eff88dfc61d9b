# SPDX-License-Identifier: MIT
# Nanoseconds a call of the same methods in R (base stats, survival), as method,ns lines. Where R has no function the
# vectorised formula stands in its place.
suppressPackageStartupMessages(library(survival))
set.seed(36)
measure <- function(name, f) {
  f(1)
  best <- Inf
  for (round in 1:3) {
    calls <- 0
    begin <- proc.time()[["elapsed"]]
    repeat {
      for (i in 1:20) f(calls + i)
      calls <- calls + 20
      spent <- proc.time()[["elapsed"]] - begin
      if (spent >= 0.1) break
    }
    best <- min(best, spent / calls)
  }
  cat(sprintf("%s,%.1f\n", name, best * 1e9))
}
cat("method,ns\n")
quiet <- suppressWarnings
measure("wilson", function(i) prop.test(15 + i %% 40, 148, correct = FALSE)$conf.int)
measure("clopper-pearson", function(i) binom.test(15 + i %% 40, 148)$conf.int)
measure("fisher", function(i) fisher.test(matrix(c(40 + i %% 20, 30 - i %% 20, 48, 32), 2), conf.int = FALSE)$p.value)
measure("garwood", function(i) poisson.test(5 + i %% 50)$conf.int)
measure("poisson-tail", function(i) c(dpois(20 + i %% 10, 16.1), ppois(20 + i %% 10, 16.1), ppois(20 + i %% 10, 16.1, lower.tail = FALSE), ppois(19 + i %% 10, 16.1, lower.tail = FALSE)))
# Near twenty times (15 to 36 were measured, as busy as the machine was): a call to qnbinom or phyper is itself C and
# costs 2 us, most of it R's own; the engine's are sums of 10 to 40 terms, a division each. The direct rate is two gamma
# quantiles.
measure("negbin-quantile", function(i) qnbinom(0.95, size = 4, mu = 16.1 + i %% 5))
measure("lqas-finite", function(i) c(phyper(9 + i %% 6, 80, 20, 19), phyper(9 + i %% 6, 50, 50, 19, lower.tail = FALSE)))
measure("digit-preference", function(i) chisq.test(c(62 + i %% 9, 14, 18, 15, 17, 58, 16, 13, 19, 8))$p.value)
x <- rbinom(36, 88, 0.8); n <- rep(88, 36); v <- x + runif(36)
# The five rules that both sides run: beyond 3 sigma, 2 of 3, 4 of 5, 8 on one side, 6 rising or falling.
rules <- function(z) {
  zone <- function(line, k, w) { a <- z > line; b <- z < -line; which((filter(a, rep(1, w), sides = 1) >= k & a) | (filter(b, rep(1, w), sides = 1) >= k & b)) }
  list(which(abs(z) > 3), zone(2, 2, 3), zone(1, 4, 5), zone(0, 8, 8), with(rle(sign(diff(z))), which(lengths >= 5)))
}
measure("p-chart-36-rules", function(i) {
  centre <- sum(x) / sum(n); s <- sqrt(centre * (1 - centre) / n)
  list(pmax(0, centre - 3 * s), pmin(1, centre + 3 * s), rules((x / n - centre) / s))
})
measure("xmr-36-rules", function(i) {
  ranges <- abs(diff(v)); mr <- mean(ranges); centre <- mean(v); s <- mr / 1.128
  list(centre + c(-3, 3) * s, which(ranges > 3.267 * mr), rules((v - centre) / s))
})
measure("run-chart-36", function(i) {
  s <- sign(v - median(v)); s <- s[s != 0]; r <- rle(s)
  c(max(r$lengths), round(log2(length(s))) + 3, length(r$lengths) - 1, qbinom(0.05, length(s) - 1, 0.5))
})
measure("ewma-36", function(i) filter(0.2 * v, 0.8, method = "recursive", init = 70))
t <- seq_along(v)
measure("mann-kendall-36", function(i) quiet(cor.test(t, v, method = "kendall", exact = FALSE, continuity = TRUE))$p.value)
# Below twenty times, and it stays so: R has no function for it, and this one line is already a loop in C. Both
# sides cost one exp and one division a reading (the engine 10 ns a reading in all), so only the call itself can be saved.
measure("mkt-100", local({ k <- 273.15 + runif(100, 2, 8); w <- 1 + runif(100); function(i) 10000 / -log(sum(w * exp(-10000 / k)) / sum(w)) - 273.15 }))
X <- rbinom(60, 88, 0.8)
measure("funnel-60", function(i) {
  n <- rep(88, 60); t <- sum(X) / sum(n); s <- sqrt(t * (1 - t) / n); z <- (X / n - t) / s
  q <- quantile(z, c(0.1, 0.9)); zw <- pmin(pmax(z, q[1]), q[2]); w <- 1 / s^2
  tau2 <- max(0, (sum(zw^2) - 59) / (sum(w) - sum(w^2) / sum(w)))
  p <- pmin(1, 2 * pmin(pbinom(X, n, t), pbinom(X - 1, n, t, lower.tail = FALSE)))
  limits <- sapply(c(0.001, 0.025, 0.975, 0.999), function(a) { r <- qbinom(a, n, t); (r - (pbinom(r, n, t) - a) / dbinom(r, n, t)) / n })
  list(tau2, p.adjust(p, "BH"), limits)
})
measure("benjamini-hochberg-60", local({ p <- runif(60); function(i) p.adjust(p, "BH") }))
measure("direct-rate-6", local({ d <- X[1:6]; T <- rep(1000, 6); W <- 10:15; function(i) {
  w <- W / sum(W); r <- sum(w * d / T); s <- sum((w / T)^2 * d); m <- max(w / T)
  c(qgamma(0.025, r^2 / s, scale = s / r), qgamma(0.975, (r + m)^2 / (s + m^2), scale = (s + m^2) / (r + m)))
} }))
measure("cochran-armitage-5", function(i) prop.trend.test(X[1:5], rep(88, 5), 0:4)$p.value)
gt <- ceiling(rexp(200, 1 / 20)); ge <- rbinom(200, 1, 0.7); gg <- rep(1:2, each = 100)
measure("kaplan-meier-100", function(i) survfit(Surv(gt[1:100], ge[1:100]) ~ 1, conf.type = "log-log"))
measure("log-rank-200", function(i) survdiff(Surv(gt, ge) ~ gg)$chisq)
measure("cusum-run-length-60", function(i) {
  m <- matrix(0, 60, 60); prob <- dbinom(0:10, 10, 0.1)
  for (state in 0:59) { to <- pmax(0, state + 6 * (0:10) - 10); for (k in which(to < 60)) m[state + 1, to[k] + 1] <- m[state + 1, to[k] + 1] + prob[k] }
  solve(diag(60) - m, rep(1, 60))[1]
})
