# The posterior of tiewright's strengths by a general statistics package, as the judge of the rating room.
#   Rscript posterior.R        (plain R, no package; made with R 4.2.2) writes the CSV files beside it.
# The model is the one of docs/models.md; chain, spline, search and second derivatives are R's own.
options(digits = 15)
set.seed(20261128)
players <- c(paste0("a", 1:4), paste0("b", 1:4), "c1", "c2")
form_mean <- c(4, 1.5, 0, -2, 3, 0, -1, -3, 0, 0)
form_sd <- c(2, 3, 4, 2.5, 3, 4, 2, 4, 6, 6)
serve <- c("side-out" = 0.47, "rally" = 0.50)

# chance that a game ends first-second, side 1 first, given the chances to win a rally on own serve; vectors
score_chance <- function(kind, target, cap, score, p1, p2, start) {
  over <- function(i, j) max(i, j) >= target && (abs(i - j) >= 2 || max(i, j) >= cap)
  turns <- if (kind == "side-out") 4 else 2              # servers in turn
  p <- if (kind == "side-out") list(p1, p1, p2, p2) else list(p1, p2)
  one <- if (kind == "side-out") c(TRUE, TRUE, FALSE, FALSE) else c(TRUE, FALSE)
  zero <- rep(0, length(p1))
  n1 <- score[1]; n2 <- score[2]
  state <- array(list(), c(n1 + 1, n2 + 1))
  empty <- rep(list(zero), turns)
  for (i in 0:n1) for (j in 0:n2) state[[i + 1, j + 1]] <- empty
  begin <- if (start == 1) turns / 2 else turns          # the first side has one server only
  state[[1, 1]][[begin]] <- zero + 1
  for (i in 0:n1) for (j in 0:n2) {
    if ((i == n1 && j == n2) || over(i, j)) next
    entered <- state[[i + 1, j + 1]]
    if (kind == "side-out") {                            # round and round without a point: geometric series
      kept <- lapply(p, function(x) 1 - x)
      round <- Reduce(`*`, kept)
      visits <- lapply(1:turns, function(t) {
        sum <- entered[[t]]; product <- 1
        for (back in 1:(turns - 1)) {
          s <- (t - back - 1) %% turns + 1
          product <- product * kept[[s]]
          sum <- sum + entered[[s]] * product
        }
        sum / (1 - round)
      })
    } else visits <- entered
    for (t in 1:turns) {
      to <- if (one[t]) c(i + 1, j) else c(i, j + 1)
      if (to[1] <= n1 && to[2] <= n2)
        state[[to[1] + 1, to[2] + 1]][[t]] <- state[[to[1] + 1, to[2] + 1]][[t]] + visits[[t]] * p[[t]]
      if (kind == "rally") {
        to <- if (one[t]) c(i, j + 1) else c(i + 1, j)
        other <- 3 - t
        if (to[1] <= n1 && to[2] <= n2)
          state[[to[1] + 1, to[2] + 1]][[other]] <- state[[to[1] + 1, to[2] + 1]][[other]] + visits[[t]] * (1 - p[[t]])
      }
    }
  }
  Reduce(`+`, state[[n1 + 1, n2 + 1]])
}
formats <- data.frame(
  code = c("side-out-11", "rally-15", "rally-21-cap-30"), kind = c("side-out", "rally", "rally"),
  target = c(11, 15, 21), cap = c(Inf, Inf, 30))
edges <- seq(-60, 60, by = 0.25)
curve_of <- function(code, score) {                      # log chance of the score as a function of the edge
  f <- formats[formats$code == code, ]
  base <- qlogis(serve[[f$kind]])
  p1 <- plogis(base + 0.04 * edges); p2 <- plogis(base - 0.04 * edges)
  chance <- (score_chance(f$kind, f$target, f$cap, score, p1, p2, 1) + score_chance(f$kind, f$target, f$cap, score, p1, p2, 2)) / 2
  splinefun(edges, log(chance), method = "fmm")
}
play <- function(f, edge) {                              # one game by dice
  one_serves <- runif(1) < 0.5; second <- TRUE; points <- c(0, 0); base <- qlogis(serve[[f$kind]])
  while (!(max(points) >= f$target && (abs(diff(points)) >= 2 || max(points) >= f$cap))) {
    won <- runif(1) < plogis(base + 0.04 * (if (one_serves) edge else -edge))
    if (f$kind == "side-out") {
      if (won) points[2 - one_serves] <- points[2 - one_serves] + 1
      else if (second) { one_serves <- !one_serves; second <- FALSE } else second <- TRUE
    } else {
      if (!won) one_serves <- !one_serves
      points[2 - one_serves] <- points[2 - one_serves] + 1
    }
  }
  points
}
pair_name <- function(x) paste(sort(x), collapse = "+")
true_form <- rnorm(10, form_mean, form_sd); names(true_form) <- players
true_extra <- new.env()
extra_of <- function(pair) {
  if (is.null(true_extra[[pair]])) assign(pair, rnorm(1, 0, 3), envir = true_extra)
  true_extra[[pair]]
}
strength <- function(x) mean(true_form[x]) + extra_of(pair_name(x))
games <- NULL
for (g in 1:30) {
  home <- sample(if (g %% 5 == 0) players[9:10] else players[1:4], 2)
  away <- sample(players[5:8], 2)
  f <- formats[(g - 1) %% 3 + 1, ]
  points <- play(f, strength(home) - strength(away))
  games <- rbind(games, data.frame(home_1 = home[1], home_2 = home[2], away_1 = away[1], away_2 = away[2],
    home = points[1], away = points[2], format = f$code))
}
film <- NULL
for (g in 1:12) {
  one <- sample(players[1:4], 2); two <- sample(players[5:8], 2)
  code <- if (g %% 4 == 0) "rally-15" else "side-out-11"
  base <- qlogis(if (g %% 4 == 0) 0.48 else 0.44)        # away from the usual rate, to be found
  served <- 15 + rpois(2, 12); edge <- strength(one) - strength(two)
  won <- rbinom(2, served, plogis(base + 0.04 * c(edge, -edge)))
  film <- rbind(film, data.frame(one_1 = one[1], one_2 = one[2], two_1 = two[1], two_2 = two[2], format = code,
    served_1 = served[1], won_1 = won[1], served_2 = served[2], won_2 = won[2]))
}
pairs <- unique(c(apply(games[, 1:2], 1, pair_name), apply(games[, 3:4], 1, pair_name),
  apply(film[, 1:2], 1, pair_name), apply(film[, 3:4], 1, pair_name)))
extra_mean <- rep(0, length(pairs)); extra_sd <- rep(3, length(pairs))
names(extra_mean) <- names(extra_sd) <- pairs
extra_mean["a1+a2"] <- 1.5; extra_sd["a1+a2"] <- 1
unknowns <- c(players, pairs, "side-out", "rally")
prior_mean <- c(form_mean, extra_mean, 0, 0); prior_sd <- c(form_sd, extra_sd, 4, 4)
row_of <- function(one, two, kind = NA) {
  x <- setNames(rep(0, length(unknowns)), unknowns)
  x[one] <- x[one] + 0.5; x[pair_name(one)] <- x[pair_name(one)] + 1
  x[two] <- x[two] - 0.5; x[pair_name(two)] <- x[pair_name(two)] - 1
  if (!is.na(kind)) x[kind] <- 1
  x
}
game_rows <- t(apply(games, 1, function(g) row_of(g[1:2], g[3:4])))
curves <- lapply(seq_len(nrow(games)), function(i) curve_of(games$format[i], c(games$home[i], games$away[i])))
kinds <- ifelse(grepl("^rally", film$format), "rally", "side-out")
film_rows <- rbind(
  t(sapply(1:nrow(film), function(i) row_of(unlist(film[i, 1:2]), unlist(film[i, 3:4]), kinds[i]))),
  t(sapply(1:nrow(film), function(i) row_of(unlist(film[i, 3:4]), unlist(film[i, 1:2]), kinds[i]))))
won <- c(film$won_1, film$won_2); served <- c(film$served_1, film$served_2); base <- qlogis(serve[c(kinds, kinds)])
minus_log_posterior <- function(x) {
  eta <- as.vector(film_rows %*% x) * 0.04 + base
  edge <- as.vector(game_rows %*% x)
  -sum(dnorm(x, prior_mean, prior_sd, log = TRUE)) - sum(dbinom(won, served, plogis(eta), log = TRUE)) -
    sum(mapply(function(curve, e) curve(e), curves, edge))
}
slope <- function(x) {
  eta <- as.vector(film_rows %*% x) * 0.04 + base
  edge <- as.vector(game_rows %*% x)
  (x - prior_mean) / prior_sd^2 - 0.04 * as.vector(t(film_rows) %*% (won - served * plogis(eta))) -
    as.vector(t(game_rows) %*% mapply(function(curve, e) curve(e, deriv = 1), curves, edge))
}
best <- optim(prior_mean, minus_log_posterior, slope, method = "BFGS", control = list(reltol = 1e-15, maxit = 2000))
x <- best$par
for (i in 1:5) x <- x - solve(optimHess(x, minus_log_posterior, slope), slope(x))
covariance <- solve(optimHess(x, minus_log_posterior, slope))
stopifnot(max(abs(slope(x))) < 1e-6)
out <- data.frame(what = c(rep("form", 10), rep("extra", length(pairs)), "serving", "serving"), name = unknowns,
  estimate = x, sd = sqrt(diag(covariance)))
contrast <- function(one, two) {
  row <- row_of(one, two)
  data.frame(what = "edge", name = paste(pair_name(one), pair_name(two)), estimate = sum(row * x),
    sd = sqrt(as.vector(row %*% covariance %*% row)))
}
out <- rbind(out, contrast(c("a1", "a2"), c("b1", "b2")), contrast(c("a1", "a3"), c("a1", "a2")), contrast(c("a3", "a4"), c("b1", "b4")))
prior <- data.frame(what = c(rep("form", 8), "extra"), name = c(players[1:8], "a1+a2"), mean = c(form_mean[1:8], 1.5), sd = c(form_sd[1:8], 1))
write.csv(games, "posterior-games.csv", row.names = FALSE, quote = FALSE)
write.csv(film, "posterior-film.csv", row.names = FALSE, quote = FALSE)
write.csv(prior, "posterior-prior.csv", row.names = FALSE, quote = FALSE)
write.csv(out, "posterior.csv", row.names = FALSE, quote = FALSE)
cat(R.version.string, ": ", nrow(games), " games, ", nrow(film), " films, ", length(unknowns), " unknowns\n", sep = "")
