# The same rows as `./dev bench beside-r` in MASS::glm.nb: time, coefficients, k.
# arguments: sheet of a million rows, sheet of a thousand rows
suppressMessages(library(MASS))

given <- commandArgs(trailingOnly = TRUE)

seconds <- function(work) {
  gc(FALSE)
  unname(system.time(work())["elapsed"])
}

say <- function(what, millis, fit) {
  cat(sprintf("%-44s %10.1f ms  k %.6f  logLik %.4f\n  coefficients %s\n", what, 1000 * millis,
              fit$theta, as.numeric(logLik(fit)), paste(sprintf("%.6f", coef(fit)), collapse = " ")))
}

model <- count ~ x1 + x2 + x3 + x4 + x5 + x6 + x7 + offset(rep(log(10), length(count)))

few <- read.csv(given[2])
fit <- glm.nb(model, data = few)
times <- replicate(5, seconds(function() suppressMessages(confint(fit))))
say("profile limits of 8 coefficients, 1,000 rows", median(times), fit)

many <- read.csv(given[1])
took <- seconds(function() fit <<- glm.nb(model, data = many))
say("1,000,000 rows, 8 coefficients", took, fit)
