# The newer figures of these tests once more, by R (Debian 12: r-base-core, r-cran-nlme).
# Run in this folder:  Rscript outside.R > outside-r.json
out <- list()
put <- function(name, value) out[[name]] <<- value

# Gwet's AC1 and Fleiss' kappa of many raters, straight from the papers' formulas.
coefs <- function(counts) {
  r <- sum(counts[1, ]); n <- nrow(counts); used <- colSums(counts) > 0
  pa <- mean(rowSums(counts * (counts - 1)) / r / (r - 1)); pj <- colSums(counts) / n / r
  ac <- sum(pj * (1 - pj)) / max(1, sum(used) - 1); ke <- sum(pj^2)
  c(kappa = (pa - ke) / (1 - ke), ac1 = (pa - ac) / (1 - ac))
}
fleiss <- as.matrix(read.csv("fleiss-1971.csv"))
put("fleiss", unname(coefs(fleiss)))
jack <- sapply(seq_len(nrow(fleiss)), function(i) coefs(fleiss[-i, ]))
se <- apply(jack, 1, function(v) sqrt((length(v) - 1) / length(v) * sum((v - mean(v))^2)))
v <- coefs(fleiss); h <- qt(.975, nrow(fleiss) - 1) * se / (1 - v)
put("fleiss lower", unname(1 - (1 - v) * exp(h)))
put("fleiss upper", unname(1 - (1 - v) * exp(-h)))

# AIAG attribute study: A against B, a part and not a grade at a time.
d <- read.csv("aiag-attribute.csv", colClasses = "character")
ab <- merge(d[d$grader == "A", ], d[d$grader == "B", ], by = c("item", "trial"))
cohen <- function(x) { t <- table(factor(x$verdict.x, c("0", "1")), factor(x$verdict.y, c("0", "1")))
  p <- t / sum(t); e <- sum(rowSums(p) * colSums(p)); (sum(diag(p)) - e) / (1 - e) }
v <- cohen(ab); items <- unique(ab$item)
w <- sapply(items, function(i) cohen(ab[ab$item != i, ]))
h <- qt(.975, length(w) - 1) * sqrt((length(w) - 1) / length(w) * sum((w - mean(w))^2)) / (1 - v)
put("aiag A and B", c(v, 1 - (1 - v) * exp(h), 1 - (1 - v) * exp(-h)))

# Share and likeness of beta-binomial counts: Jeffreys' prior, likeness Beta(1, 4), even in both logits; ends and mean likeness.
clusters <- function(y, n, b = 4) {
  u <- aggregate(w ~ y + n, data.frame(y = y, n = n, w = 1), sum)
  x <- seq(-20, 20, length.out = 4001); v <- seq(-12, 12, length.out = 481); r <- plogis(v)
  l <- sapply(v, function(v) { s <- exp(-v); a <- plogis(x) * s; z <- plogis(-x) * s
    plogis(v, log.p = TRUE) + b * plogis(-v, log.p = TRUE) +
      .5 * (plogis(x, log.p = TRUE) + plogis(-x, log.p = TRUE)) +
      rowSums(sapply(seq_len(nrow(u)), function(i) u$w[i] * (lbeta(a + u$y[i], z + u$n[i] - u$y[i]) - lbeta(a, z)))) })
  w <- exp(l - max(l)); m <- rowSums(w); s <- cumsum((c(0, head(m, -1)) + m) / 2)
  c(plogis(approx(s / max(s), x, c(.025, .975), ties = "ordered")$y), sum(t(w) * r) / sum(w))
}
put("clusters, faults on two photos", clusters(c(9, 6, 0, 0, 0, 0, 1, 0), rep(19, 8)))
put("clusters, no fault", clusters(rep(0, 5), rep(19, 5)))
put("clusters, uneven photos", clusters(c(0, 0), c(1, 19)))
put("clusters, even photos", clusters(rep(2, 30), rep(20, 30)))
put("clusters, many photos", clusters(c(rep(0, 100), 1, 2, 3), rep(19, 103)))
put("clusters, whole photos", clusters(c(rep(0, 190), rep(19, 10)), rep(19, 200)))
put("clusters, nearly whole photos", clusters(c(rep(0, 95), 19, 19, 18, 19, 17), rep(19, 100)))

# Variance components by REML: AIAG gauge study, whole and with readings left out.
suppressMessages(library(nlme))
g <- read.csv("aiag-gauge.csv", colClasses = c(part = "character", operator = "character"))
reml <- function(g) {
  g$all <- factor(1); g$part <- factor(g$part); g$operator <- factor(g$operator)
  g$cell <- factor(paste(g$part, g$operator))
  f <- lme(value ~ 1, g, random = list(all = pdBlocked(list(pdIdent(~part - 1),
    pdIdent(~operator - 1), pdIdent(~cell - 1)))), method = "REML",
    control = lmeControl(msTol = 1e-12, tolerance = 1e-12, maxIter = 500, msMaxIter = 500, opt = "optim", returnObject = TRUE))
  d <- diag(as.matrix(f$modelStruct$reStruct$all)) * f$sigma^2
  s <- d[c(1, 1 + nlevels(g$part), 1 + nlevels(g$part) + nlevels(g$operator))]
  c(sqrt(s), f$sigma, as.numeric(logLik(f)))
}
put("reml whole", unname(reml(g)))
h <- g[-c(3, 17, 18, 77), ]
put("reml part", unname(reml(h[!(h$part == "4" & h$operator == "B"), ])))

# Bias of joints on boards and its slope, a board left out at a time; then by part, as if each stood alone.
board <- c(1, 1, 1, 1, 2, 2, 2, 3, 3, 3, 3, 4, 4, 5, 5, 5)
known <- c(.01, .03, .05, .02, .06, .04, .07, .01, .02, .08, .03, .05, .09, .02, .04, .06)
off <- c(-.012, -.010, -.011, -.013, .004, .003, .006, -.002, -.004, .001, -.003, .009, .011, -.005, -.006, -.002)
jack <- function(f) { w <- sapply(1:5, function(b) f(board != b)); sqrt(4 / 5 * sum((w - mean(w))^2)) }
m <- mean(off); e <- jack(function(k) mean(off[k]))
put("bias by board", c(m, m + qt(c(.025, .975), 4) * e, 2 * pt(-abs(m / e), 4)))
s <- coef(lm(off ~ known))[[2]]; e <- jack(function(k) coef(lm(off[k] ~ known[k]))[[2]])
put("slope by board", s + c(0, qt(c(.025, .975), 3)) * e)
put("bias by part", c(mean(off), t.test(off)$conf.int, t.test(off)$p.value))
put("slope by part", unname(c(s, confint(lm(off ~ known))[2, ])))

# JCGM 106, clause 9: normal process and measurement, limits by integral.
risk <- function(m, s, u, tl, tu, al, au) {
  inside <- function(x) pnorm(au, x, u) - pnorm(al, x, u)
  fa <- integrate(function(x) dnorm(x, m, s) * inside(x), -Inf, tl, rel.tol = 1e-12)$value * (tl > -Inf)
  fb <- integrate(function(x) dnorm(x, m, s) * inside(x), tu, Inf, rel.tol = 1e-12)$value
  fr <- integrate(function(x) dnorm(x, m, s) * (1 - inside(x)), tl, tu, rel.tol = 1e-12)$value
  c(fa + fb, fr)
}
# Readings surely beyond, g outside the limits; what is neither is left open.
split <- function(m, s, u, tl, tu, g) {
  out <- function(x) pnorm(tl - g, x, u) + 1 - pnorm(tu + g, x, u)
  open <- function(x) 1 - out(x) - pmax(0, pnorm(tu - g, x, u) - pnorm(tl + g, x, u))
  cuts <- sort(c(m - 9 * s, max(tl, m - 9 * s), m, tu - g, tu, tu + g, m + 9 * s))
  total <- sum(mapply(function(a, b) if (b > a) integrate(function(x) dnorm(x, m, s) * open(x), a, b, rel.tol = 1e-12)$value else 0, head(cuts, -1), tail(cuts, -1)))
  c(integrate(function(x) dnorm(x, m, s) * out(x), max(tl, m - 9 * s), tu, rel.tol = 1e-12)$value, total)
}
put("split overhang guarded", split(0.03, 0.02, 0.0086, -Inf, 0.065, 1.645 * 0.0086))
put("split two-sided", split(0.01, 0.1, 0.05, -0.2, 0.2, 0.05))
put("risk overhang", risk(0.03, 0.02, 0.0086, -Inf, 0.065, -Inf, 0.065))
put("risk overhang guarded", risk(0.03, 0.02, 0.0086, -Inf, 0.065, -Inf, 0.065 - 1.645 * 0.0086))
put("risk two-sided", risk(0.01, 0.1, 0.05, -0.2, 0.2, -0.15, 0.15))

# Sampling: reduced plan 32, Ac 2, Re 5; hypergeometric; double plan 50/50, 1 4, 4 5.
put("reduced accepts at .05", pbinom(4, 32, .05))
put("reduced quality at .10", uniroot(function(p) pbinom(4, 32, p) - .10, c(.01, .6), tol = 1e-13)$root)
dbl <- function(p) { x <- 2:3; pbinom(1, 50, p) + sum(dbinom(x, 50, p) * pbinom(4 - x, 50, p)) }
put("double accepts", sapply(c(.01, .03, .06, .1), dbl))
put("double sample number", sapply(c(.01, .03, .06, .1), function(p) 50 + 50 * sum(dbinom(2:3, 50, p))))
aoq <- function(p) p * pbinom(2, 80, p) * (1 - 80 / 1000)
o <- optimize(aoq, c(0, .2), maximum = TRUE, tol = 1e-12); put("aoql 80/2 of 1000", o$objective)

# Charts.
put("g limits", { p <- 1 / (1 + 20); c(qgeom(.5, p), qgeom(.00135, p), qgeom(1 - .00135, p)) })

y <- c(3, 4, 2, 5, 9, 1, 14, 2, 3, 16, 4, 2); n <- rep(100, 12); p <- sum(y) / sum(n)
put("homogeneity p", suppressWarnings(prop.test(y, n)$p.value))
z <- (y / n - p) / sqrt(p * (1 - p) / n)
put("laney spread", mean(abs(diff(z))) / 1.128)
# Average run lengths by integral equations solved at Gauss-Legendre points: of one cumulative sum (Page 1954,
# Biometrika 41:100) and of a moving average with constant limits (Crowder 1987, Technometrics 29:401). With exact
# limits, which widen at first, the chance of no signal is carried on from group to group until they are constant.
gauss <- function(n, a, b) {
  i <- seq_len(n - 1); e <- eigen(local({ m <- matrix(0, n, n); v <- i / sqrt(4 * i^2 - 1); m[cbind(i, i + 1)] <- v; m[cbind(i + 1, i)] <- v; m }), symmetric = TRUE)
  list(x = (a + b) / 2 + (b - a) / 2 * e$values, w = (b - a) * e$vectors[1, ]^2)
}
cusum_one <- function(k, h, shift) {
  g <- gauss(80, 0, h); x <- c(0, g$x)
  m <- cbind(pnorm(k - x - shift), sweep(outer(x, g$x, function(u, y) dnorm(y + k - u - shift)), 2, g$w, "*"))
  solve(diag(length(x)) - m, rep(1, length(x)))[1]
}
cusum_both <- function(k, h, shift) 1 / (1 / cusum_one(k, h, shift) + 1 / cusum_one(k, h, -shift))
ewma_onward <- function(l, c, shift) {
  g <- gauss(120, -c, c)
  m <- sweep(outer(g$x, g$x, function(u, y) dnorm((y - (1 - l) * u) / l - shift) / l), 2, g$w, "*")
  len <- solve(diag(120) - m, rep(1, 120))
  function(u) 1 + as.vector(outer(u, g$x, function(u, y) dnorm((y - (1 - l) * u) / l - shift) / l) %*% (g$w * len))
}
ewma_constant <- function(l, width, shift) ewma_onward(l, width * sqrt(l / (2 - l)), shift)(0)
ewma_exact <- function(l, width, shift) {
  c <- function(t) width * sqrt(l / (2 - l) * (1 - (1 - l)^(2 * t)))
  g <- gauss(120, -c(1), c(1)); f <- dnorm(g$x / l - shift) / l; len <- 1
  for (t in 2:100) {
    len <- len + sum(g$w * f); to <- gauss(120, -c(t), c(t))
    f <- as.vector(outer(to$x, g$x, function(y, u) dnorm((y - (1 - l) * u) / l - shift) / l) %*% (g$w * f)); g <- to
  }
  len + sum(g$w * f * ewma_onward(l, width * sqrt(l / (2 - l)), shift)(g$x))
}
put("cusum .5, 5 groups to a signal, no shift, 1 sigma", c(cusum_both(.5, 5, 0), cusum_both(.5, 5, 1)))
put("cusum .5, 4 groups to a signal, no shift, 1 sigma", c(cusum_both(.5, 4, 0), cusum_both(.5, 4, 1)))
put("ewma .2, 2.962 constant limits, groups to a signal, no shift, 1 sigma", c(ewma_constant(.2, 2.962, 0), ewma_constant(.2, 2.962, 1)))
put("ewma .2, 2.962 exact limits, groups to a signal, no shift, 1 sigma", c(ewma_exact(.2, 2.962, 0), ewma_exact(.2, 2.962, 1)))
put("t limits", qexp(c(.5, .00135, 1 - .00135), 1 / 10))

cat("{\n", paste(sprintf('  "%s": %s', names(out), sapply(out, function(v)
  if (length(v) == 1) format(v, digits = 15) else paste0("[", paste(format(v, digits = 15, trim = TRUE), collapse = ", "), "]"))),
  collapse = ",\n"), "\n}\n", sep = "")
